import { expect, test } from 'vitest';
import { ROUTING } from '../reading/two-holes.test-plan.ts';
import { editOfAction } from './bead-actions.ts';

const OF = { routing: 'a', hole: 'h1' };

test('every action of the menu is one named edit', () => {
  expect(editOfAction(ROUTING, 'h1', { do: 'reverse' })).toEqual({ ...OF, edit: 'reverse hole' });
  expect(editOfAction(ROUTING, 'h1', { do: 'take out' })).toEqual({ ...OF, edit: 'take out' });
  expect(editOfAction(ROUTING, 'h1', { do: 'swap', with: 'h2' })).toEqual({ ...OF, edit: 'swap places', with: 'h2' });
});

test('a spare hole comes back last in the round', () => {
  expect(editOfAction(ROUTING, 's1', { do: 'bring back' })).toEqual({
    edit: 'bring back',
    routing: 'a',
    hole: 's1',
    loop: 'front',
    after: 'h2',
  });
  expect(editOfAction({ ...ROUTING, loops: [] }, 's1', { do: 'bring back' })).toBeUndefined();
});

test('a new verdict keeps the reason that was given', () => {
  const holes = ROUTING.holes.map((hole) => (hole.id === 'h1' ? { ...hole, verdictReason: 'the dune' } : hole));
  expect(editOfAction({ ...ROUTING, holes }, 'h1', { do: 'judge', verdict: 'weak' })).toMatchObject({
    verdict: 'weak',
    reason: 'the dune',
  });
});

test('a spare hole is inserted between a hole and the next', () => {
  expect(editOfAction(ROUTING, 'h1', { do: 'insert', spare: 's1' })).toEqual({
    edit: 'bring back',
    routing: 'a',
    hole: 's1',
    loop: 'front',
    after: 'h1',
  });
  expect(editOfAction(ROUTING, 's1', { do: 'insert', spare: 's1' })).toBeUndefined();
});
