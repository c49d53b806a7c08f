import { expect, test } from 'vitest';
import { PLAN, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { toNamesRows } from './names-view.ts';

test('every hole has its name and verdict, spare ones last by their place in the tray', () => {
  const holes = ROUTING.holes.map((hole) =>
    hole.id === 'h2' ? { ...hole, name: 'Whin', verdictReason: 'the dune' } : hole,
  );
  const rows = toNamesRows(PLAN, { ...ROUTING, holes });
  expect(rows.map(({ number, name, verdict, reason }) => [number, name, verdict, reason])).toEqual([
    ['1', '', 'keeper', ''],
    ['2', 'Whin', 'undecided', 'the dune'],
    ['S1', '', 'undecided', ''],
  ]);
});
