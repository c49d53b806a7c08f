import { expect, test } from 'vitest';
import { ROUTING } from '../reading/two-holes.test-plan.ts';
import { choosing, chosenHoles, holesInOrder, withOrWithout } from './chosen-holes.ts';

test('the hole picked last is the one whose figures are shown', () => {
  expect(choosing(['h1', 'h2'])).toEqual({ hole: 'h2', also: ['h1'] });
  expect(choosing(['h1', 'h1'])).toEqual({ hole: 'h1' });
  expect(choosing([])).toEqual({});
});

test('a hole is picked out further, and let go by picking it again', () => {
  const two = withOrWithout(ROUTING, { hole: 'h1' }, 'h2');
  expect(chosenHoles(ROUTING, two)).toEqual(['h1', 'h2']);
  expect(withOrWithout(ROUTING, two, 'h2')).toEqual({ hole: 'h1' });
  expect(withOrWithout(ROUTING, { hole: 'h1' }, 'h1')).toEqual({});
});

test('what is no longer on the plan is not picked out', () => {
  const holes = ROUTING.holes.map((hole) =>
    hole.id === 'h2' ? { ...hole, seat: { in: 'removed', key: 'a' } as const } : hole,
  );
  expect(chosenHoles({ ...ROUTING, holes }, { hole: 'h1', also: ['h2', 'never was'] })).toEqual(['h1']);
});

test('all holes are the round and then the tray', () => {
  expect(holesInOrder(ROUTING)).toEqual([...ROUTING.loops.flatMap(({ holes }) => holes), ...ROUTING.spare]);
});
