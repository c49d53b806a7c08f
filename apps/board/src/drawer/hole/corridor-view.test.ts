import { SETTINGS } from '@loopwright/model';
import { expect, test } from 'vitest';
import { PLAN, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { corridorAnswer, toCorridorRows } from './corridor-view.ts';

const [hole] = ROUTING.holes;
if (!hole) throw new Error('the sample has no hole');
const of = { routing: 'a', hole };

test('a hole has the widths of the board until it has its own', () => {
  const rows = toCorridorRows({ ...hole, corridor: { tee: 18 } }, PLAN);
  expect(rows.map(({ place, width, own }) => [place, width, own])).toEqual([
    ['tee', 18, true],
    ['landing', SETTINGS['corridor-landing'].default, false],
    ['green', SETTINGS['corridor-green'].default, false],
    ['behind', SETTINGS['corridor-behind'].default, false],
  ]);
});

test('a typed width is kept beside the others; an emptied field goes back to the board’s', () => {
  const own = { ...hole, corridor: { tee: 18, green: 25 } };
  const [tee, landing] = toCorridorRows(own, PLAN);
  if (!tee || !landing) throw new Error('no rows');
  const edit = { edit: 'set corridor', routing: 'a', hole: 'h1' };
  expect(corridorAnswer({ ...of, hole: own }, landing, '40', 'metres')).toEqual({
    kind: 'edit',
    edit: { ...edit, corridor: { tee: 18, green: 25, landing: 40 } },
  });
  expect(corridorAnswer({ ...of, hole: own }, tee, ' ', 'metres')).toEqual({
    kind: 'edit',
    edit: { ...edit, corridor: { green: 25 } },
  });
  expect(corridorAnswer({ ...of, hole: { ...hole, corridor: { tee: 18 } } }, tee, '', 'metres')).toMatchObject({
    edit: { corridor: null },
  });
  expect(corridorAnswer(of, landing, '', 'metres')).toEqual({ kind: 'same' });
});

test('no corridor is less than nothing or wider than a plan allows', () => {
  const [tee] = toCorridorRows(hole, PLAN);
  if (!tee) throw new Error('no row');
  for (const typed of ['-5', '501', 'x']) expect(corridorAnswer(of, tee, typed, 'metres').kind).toBe('wrong');
});
