import type { NamedEdit } from '@loopwright/document';
import type { Plan, SiteMark } from '@loopwright/model';
import { expect, test } from 'vitest';
import { PLAN, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import { openDrawHoleOptions } from './draw-hole-options.ts';
import { startDrawHole } from './start-draw-hole.ts';

function drawing(parts: Parameters<typeof openFakeBench>[0] = {}) {
  const fake = openFakeBench(parts);
  const options = openDrawHoleOptions();
  const running = startDrawHole(fake.bench, options);
  const press = (x: number, y: number) => running.press(mouseAt(x, y), undefined);
  const hover = (x: number, y: number) => running.hover(mouseAt(x, y));
  return { ...fake, options, running, press, hover };
}

/** The hole that an edit draws. */
function holeOf(edit: NamedEdit | undefined) {
  if (edit?.edit !== 'draw hole') throw new Error(`no hole is drawn by ${edit?.edit}`);
  return {
    tee: edit.tees.back,
    turns: edit.turnPoints.map(({ at }) => at),
    green: edit.green?.centre,
    seat: edit.seat,
  };
}

test('tee, turn, green twice: one step, in the next place of the round', () => {
  const { press, running, written, bench } = drawing();
  press(1000, 1000);
  press(1000, 1240);
  press(1100, 1400);
  expect(written).toEqual([]);
  running.finish?.();
  expect(written).toHaveLength(1);
  expect(holeOf(written[0])).toMatchObject({
    tee: { x: 1000, y: 1000 },
    turns: [{ x: 1000, y: 1240 }],
    green: { x: 1100, y: 1400 },
  });
  expect(bench.selection().hole).toBeDefined();
});

test('from the green back to the tee', () => {
  const { press, running, options, written } = drawing();
  options.first.set('green');
  press(1100, 1400);
  press(1000, 1240);
  press(1000, 1000);
  running.finish?.();
  expect(holeOf(written[0])).toMatchObject({
    tee: { x: 1000, y: 1000 },
    turns: [{ x: 1000, y: 1240 }],
    green: { x: 1100, y: 1400 },
  });
});

test('everybody sees it with its green at the pointer, and length and par run along', () => {
  const { press, hover, running, shown } = drawing();
  press(0, 0);
  expect(holeOf(shown()).green).toBeUndefined();
  hover(0, 330);
  expect(holeOf(shown()).green).toEqual({ x: 0, y: 330 });
  // The R&A/USGA table has par 4 for 330 m (Rules of Handicapping, Appendix F, men 220 to 450 m).
  expect(running.picture.get().atPointer?.[0]).toBe('330 m, par 4');
});

test('a typed length waits for its direction; with a bearing it is placed at once', () => {
  const { press, hover, running, shown, written } = drawing();
  press(0, 0);
  expect(running.enter?.('240')).toBeUndefined();
  hover(3, 4);
  // 240 m in the direction of 3, 4 of 5: 144 east, 192 north.
  expect(holeOf(shown()).green).toEqual({ x: 144, y: 192 });
  press(3, 4);
  expect(running.enter?.('100 @ 090')).toBeUndefined();
  running.finish?.();
  expect(holeOf(written[0])).toMatchObject({ turns: [{ x: 144, y: 192 }], green: { x: 244, y: 192 } });
});

test('=400 makes the whole hole 400 long with the next press', () => {
  const { press, running, written } = drawing();
  press(0, 0);
  press(0, 240);
  expect(running.enter?.('=400')).toBeUndefined();
  press(50, 240);
  expect(holeOf(written[0]).green).toEqual({ x: 160, y: 240 });
});

test('a place is typed east and north', () => {
  const { running, written } = drawing();
  expect(running.enter?.('1234.5, 678.9')).toBeUndefined();
  expect(running.enter?.('1234.5, 878.9')).toBeUndefined();
  running.finish?.();
  expect(holeOf(written[0])).toMatchObject({ tee: { x: 1234.5, y: 678.9 }, green: { x: 1234.5, y: 878.9 } });
});

test('a press on a green site ends the hole there', () => {
  const mark: SiteMark = { id: 'm1', kind: 'green site', at: { x: 2000, y: 2300 }, verdict: 'natural' };
  const plan: Plan = { ...PLAN, site: { ...PLAN.site, marks: [mark] } };
  const { press, written } = drawing({ plan });
  press(2000, 2000);
  press(2000, 2300);
  expect(holeOf(written[0]).green).toEqual({ x: 2000, y: 2300 });
});

test('the fifth point is the last: three turns and no more', () => {
  const { press, written } = drawing();
  for (const y of [0, 100, 200, 300, 400]) press(0, y);
  expect(holeOf(written[0]).turns).toHaveLength(3);
});

test('what cannot be is said and draws nothing', () => {
  const { press, hover, running, said, shown } = drawing();
  press(0, 0);
  press(0, 0);
  expect(said.at(-1)).toContain('Too near');
  press(0, 3000);
  expect(said.at(-1)).toContain('longer than any hole');
  hover(0, 3000);
  expect(holeOf(shown()).green).toBeUndefined();
  running.finish?.();
  expect(said.at(-1)).toBe('It has a tee only: place its green too.');
  expect(running.enter?.('nonsense')).toContain('says no length');
});

test('Backspace takes one point back, Escape all, and then it is put away', () => {
  const { press, running, shown, written } = drawing();
  press(0, 0);
  press(0, 200);
  expect(running.back?.()).toBe(true);
  expect(holeOf(shown()).turns).toEqual([]);
  expect(running.letGo()).toBe(true);
  expect(shown()).toBeUndefined();
  expect(running.letGo()).toBe(false);
  expect(running.back?.()).toBe(false);
  expect(written).toEqual([]);
});

test('on a locked routing nothing is drawn, and it says so', () => {
  const { press, running, said, shown } = drawing({ routing: { ...ROUTING, locked: true } });
  press(0, 0);
  expect(said.at(-1)).toContain('locked');
  expect(running.prompt.get()).toContain('locked');
  expect(shown()).toBeUndefined();
});

test('the loop that was taken away meanwhile leaves what is drawn as it is', () => {
  const fake = openFakeBench();
  const running = startDrawHole({ ...fake.bench, write: () => 'gone' }, openDrawHoleOptions());
  running.press(mouseAt(0, 0), undefined);
  running.press(mouseAt(0, 200), undefined);
  running.finish?.();
  expect(fake.said.at(-1)).toContain('removed meanwhile');
  expect(holeOf(fake.shown()).tee).toEqual({ x: 0, y: 0 });
});

test('put away half drawn, it leaves no trace', () => {
  const { press, running, shown } = drawing();
  press(0, 0);
  running.stop();
  expect(shown()).toBeUndefined();
});
