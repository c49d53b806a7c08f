import { expect, test } from 'vitest';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import { openRodChoice } from './rod-choice.ts';
import { startRod } from './start-rod.ts';

const at = (x: number, y: number) => ({ x, y });

function openRod(parts: Parameters<typeof openFakeBench>[0] = {}) {
  const board = openFakeBench(parts);
  const choice = openRodChoice();
  return { ...board, choice, running: startRod(board.bench, choice) };
}
const tap = (running: ReturnType<typeof openRod>['running'], x: number, y: number) =>
  running.press(mouseAt(x, y), undefined)?.end(mouseAt(x, y));
const joints = (edit: unknown) => JSON.parse(JSON.stringify(edit)).sketch.shape.points;
const rounded = (points: readonly { x: number; y: number }[]) =>
  points.map(({ x, y }) => at(Math.round(x), Math.round(y)));

test('pinned by a press, the rod points at the pointer until it is laid down; everybody sees it', () => {
  const { running, shown } = openRod();
  tap(running, 0, 0);
  running.hover(mouseAt(300, 0));
  expect(joints(shown())).toEqual([at(0, 0), at(265, 0), at(405, 0)]);
  // 405 m for men is par 4 alone: 4 from 220 to 450 m, 5 from 410 m (Rules of Handicapping, Appendix F).
  expect(running.picture.get().atPointer).toEqual(['265 + 140 = 405 m, par 4', 'played 090°']);
  tap(running, 0, 300);
  running.hover(mouseAt(300, 300));
  expect(rounded(joints(shown()))).toEqual([at(0, 0), at(0, 265), at(0, 405)]);
});

test('a joint that is taken bends the leg before it and carries the rest along', () => {
  const { running, shown } = openRod();
  tap(running, 0, 0);
  tap(running, 0, 300);
  tap(running, 0, 405); // the far end is taken: the last leg follows
  running.hover(mouseAt(500, 265));
  expect(rounded(joints(shown()))).toEqual([at(0, 0), at(0, 265), at(140, 265)]);
  tap(running, 500, 265);
  const dragged = running.press(mouseAt(0, 265), undefined); // the joint, dragged: the bend is kept
  dragged?.move(mouseAt(265, 0));
  dragged?.end(mouseAt(265, 0));
  expect(rounded(joints(shown()))).toEqual([at(0, 0), at(265, 0), at(265, -140)]);
});

test('one press of Enter leaves a hole: tee, turn, green, in the next place of the round', () => {
  const { running, written, said } = openRod();
  tap(running, 0, 0);
  running.hover(mouseAt(0, 300));
  running.finish?.();
  const [hole] = written;
  expect(hole).toMatchObject({
    edit: 'draw hole',
    seat: { loop: 'front', after: 'h2' },
    tees: { back: at(0, 0) },
    turnPoints: [{ at: at(0, 265) }],
    green: { centre: at(0, 405), bearing: 0 },
  });
  expect(said.at(-1)).toBe('Left: hole 3, 405 m, par 4.');
  expect(running.back?.()).toBe(false);
});

test('a double press on the pin leaves no hole: nobody has said where it goes', () => {
  const { running, written, said } = openRod();
  tap(running, 0, 0);
  running.finish?.();
  expect(written).toEqual([]);
  expect(said.at(-1)).toMatch(/Point the rod/);
});

test('pinned at the green, the legs run from the tee all the same', () => {
  const { running, written, choice } = openRod();
  choice.end.set('green');
  tap(running, 0, 0);
  running.hover(mouseAt(0, -300));
  running.finish?.();
  expect(written[0]).toMatchObject({
    tees: { back: at(0, -405) },
    turnPoints: [{ at: at(0, -140) }],
    green: { centre: at(0, 0), bearing: 0 },
  });
});

test('left lying it is a sketch, its joints from the pin', () => {
  const { running, written } = openRod();
  tap(running, 10, 0);
  running.hover(mouseAt(10, 300));
  running.hand.leaveLying();
  expect(written).toMatchObject([{ edit: 'add sketch', sketch: { shape: { kind: 'rod' }, kept: false, by: 'Ann' } }]);
  expect(joints(written[0])).toEqual([at(10, 0), at(10, 265), at(10, 405)]);
});

test('a joint turns on to a site mark at its distance, and does not stretch to one that is not', () => {
  const mark = at(3, 264.98);
  const snap = (place: { x: number; y: number }) =>
    Math.hypot(place.x - mark.x, place.y - mark.y) < 12 ? { at: mark, because: 'landing ground' } : { at: place };
  const { running, shown } = openRod({ snap });
  tap(running, 0, 0);
  running.hover(mouseAt(6, 300));
  const [, joint] = joints(shown());
  expect(Math.hypot(joint.x, joint.y)).toBeCloseTo(265, 2);
  expect(joint.x / joint.y).toBeCloseTo(mark.x / mark.y, 5);
  expect(running.picture.get().atPointer?.at(-1)).toBe('landing ground');
});

test('a typed bearing points it, typed legs change it, a typed place pins it', () => {
  const { running, shown } = openRod();
  expect(running.enter?.('90')).toMatch(/Pin the rod/);
  expect(running.enter?.('10, 20')).toBeUndefined();
  expect(running.enter?.('90')).toBeUndefined();
  expect(rounded(joints(shown()))).toEqual([at(10, 20), at(275, 20), at(415, 20)]);
  expect(running.enter?.('200 + 100 + 50')).toBeUndefined();
  expect(rounded(joints(shown()))).toEqual([at(10, 20), at(210, 20), at(310, 20), at(360, 20)]);
  for (const wrong of ['400', '5 + 5', '1 + 2 + 3 + 4 + 5', 'far', '', `${'9'.repeat(9000)} + 1`])
    expect(running.enter?.(wrong)).toEqual(expect.any(String));
});

test('a locked routing takes no hole, and the rod stays where it is', () => {
  const plan = openFakeBench().bench.routing();
  const { running, written, said, shown } = openRod({ routing: { ...plan, locked: true } });
  tap(running, 0, 0);
  running.hover(mouseAt(0, 300));
  running.finish?.();
  expect(written).toEqual([]);
  expect(said.at(-1)).toMatch(/locked/);
  expect(shown()).toMatchObject({ edit: 'add sketch' });
});

test('a press that is taken away leaves the rod as it was; Esc takes it up', () => {
  const { running, shown } = openRod();
  tap(running, 0, 0);
  tap(running, 0, 300);
  const before = shown();
  const press = running.press(mouseAt(200, 200), undefined);
  press?.move(mouseAt(300, 100));
  press?.cancel();
  expect(shown()).toEqual(before);
  expect(running.letGo()).toBe(true);
  expect(shown()).toBeUndefined();
  expect(running.letGo()).toBe(false);
});
