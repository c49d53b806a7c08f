import type { Plan, Sketch } from '@loopwright/model';
import { expect, test } from 'vitest';
import { openSlot } from '../../live/slot.ts';
import { PLAN } from '../../reading/two-holes.test-plan.ts';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import { wipeable } from '../sketches/wiping.ts';
import { type PencilEnd, startPencil } from './start-pencil.ts';

const at = (x: number, y: number) => ({ x, y });
const stroke = (id: string, y: number, over: Partial<Sketch> = {}): Sketch => ({
  id,
  shape: { kind: 'stroke', points: [at(0, y), at(100, y)] },
  by: 'Ann',
  ink: 2,
  kept: false,
  ...over,
});
const planWith = (...sketches: readonly Sketch[]): Plan => ({ ...PLAN, site: { ...PLAN.site, sketches } });

function openPencilInHand(first: PencilEnd = 'point', plan: Plan = PLAN) {
  const board = openFakeBench({ plan });
  const end = openSlot<PencilEnd>(first);
  return { ...board, end, running: startPencil(board.bench, end) };
}

test('a drag is shown to everybody while it is drawn, and written once', () => {
  const { running, written, shown } = openPencilInHand();
  const drawing = running.press(mouseAt(0, 0), undefined);
  drawing?.move(mouseAt(20, 0));
  drawing?.move(mouseAt(40, 0));
  drawing?.move(mouseAt(40, 30));
  const points = [at(0, 0), at(40, 0), at(40, 30)]; // what lies on the straight is left out
  expect(shown()).toMatchObject({
    edit: 'add sketch',
    sketch: { shape: { kind: 'stroke', points }, by: 'Ann', ink: 2 },
  });
  expect(written).toEqual([]);
  drawing?.end(mouseAt(40, 30));
  expect(written).toMatchObject([{ sketch: { shape: { kind: 'stroke', points } } }]);
  expect(shown()).toBeUndefined();
});

test('a second finger takes the stroke away, and nothing is written', () => {
  const { running, written, shown } = openPencilInHand();
  const drawing = running.press(mouseAt(0, 0), undefined);
  drawing?.move(mouseAt(50, 0));
  drawing?.cancel();
  expect(shown()).toBeUndefined();
  expect(written).toEqual([]);
});

test('without a drag a line goes from press to press, and Enter ends it', () => {
  const { running, written } = openPencilInHand();
  for (const x of [0, 50, 90]) running.press(mouseAt(x, x / 2), undefined)?.end(mouseAt(x, x / 2));
  expect(running.back?.()).toBe(true);
  running.finish?.();
  expect(written).toMatchObject([{ sketch: { shape: { points: [at(0, 0), at(50, 25)] } } }]);
});

test('one point alone is no line', () => {
  const { running, written } = openPencilInHand();
  running.press(mouseAt(0, 0), undefined)?.end(mouseAt(0, 0));
  running.finish?.();
  expect(written).toEqual([]);
});

test('the eraser wipes all it is drawn over in one step; what is kept stays', () => {
  const plan = planWith(stroke('k1', 0), stroke('k2', 50), stroke('k3', 100, { kept: true }));
  const { running, written, said } = openPencilInHand('eraser', plan);
  const wiping = running.press(mouseAt(50, 2), undefined);
  for (const y of [25, 49, 99]) wiping?.move(mouseAt(50, y));
  wiping?.end(mouseAt(50, 99));
  expect(written).toEqual([{ edit: 'wipe sketches', sketches: ['k1', 'k2'] }]);
  expect(said.at(-1)).toMatch(/kept/);
});

test('all of mine, or all that are not kept, can be wiped at once', () => {
  const sketches = [
    stroke('k1', 0),
    stroke('k2', 9, { by: 'Jo' }),
    stroke('k3', 9, { kept: true }),
    stroke('k4', 9, { ink: 3 }),
  ];
  expect(wipeable(sketches, 'mine', { name: 'Ann' })).toEqual(['k1', 'k4']);
  expect(wipeable(sketches, 'everybody', { name: 'Ann' })).toEqual(['k1', 'k2', 'k4']);
});
