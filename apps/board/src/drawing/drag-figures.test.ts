import { expect, test } from 'vitest';
import { ANALYSIS, PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { dragFigures } from './drag-figures.ts';

const shown = { plan: PLAN, routing: ROUTING, analysis: ANALYSIS };
const yards = { units: 'yards', teeSet: 'back' } as const;
const of = { routing: 'a', hole: 'h1' };

test('while a part is dragged the length and par of its hole run along', () => {
  // 365.76 m are 400 yd of 0.9144 m.
  expect(dragFigures({ ...of, edit: 'move part', part: 'green', to: { x: 0, y: 0 } }, shown, yards)).toEqual([
    '400 yd, par 4',
  ]);
});

test('a bent hole tells its legs', () => {
  const holes = ROUTING.holes.map((hole) =>
    hole.id === 'h1' ? { ...hole, turnPoints: [{ id: 't1', at: { x: 0, y: 219.456 } }] } : hole,
  );
  const bent = { ...shown, routing: { ...ROUTING, holes } };
  expect(dragFigures({ ...of, edit: 'lengthen', end: 'green', by: 4 }, bent, yards)).toEqual([
    '400 yd (240 + 160), par 4',
  ]);
});

test('a green tells its size and lie, a move how far and which way', () => {
  const shape = { length: 32, width: 24, bearing: Math.PI / 4 };
  expect(dragFigures({ ...of, edit: 'shape green', shape }, shown, { ...yards, units: 'metres' })).toEqual([
    'green 32 × 24 m, 045°',
  ]);
  const by = { x: 30, y: 30 };
  expect(
    dragFigures({ edit: 'move holes', routing: 'a', holes: ['h1'], by }, shown, { ...yards, units: 'metres' }),
  ).toEqual(['42 m north-east']);
});

test('a hole that is gone has no figures', () => {
  expect(dragFigures({ ...of, hole: 'gone', edit: 'lengthen', end: 'green', by: 4 }, shown, yards)).toEqual([]);
});
