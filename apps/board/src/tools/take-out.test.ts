import { expect, test } from 'vitest';
import { ROUTING } from '../reading/two-holes.test-plan.ts';
import { takenOut } from './take-out.ts';

const of = { routing: 'a', hole: 'h1' };

test('a turn point goes, a placed tee is proposed again, a green stays and says why', () => {
  expect(takenOut(ROUTING, { hole: 'h1', part: 'turn:t1' })).toMatchObject({
    edit: { ...of, edit: 'remove turn point', turn: 't1' },
    select: { hole: 'h1' },
  });
  expect(takenOut(ROUTING, { hole: 'h1', part: 'tee:back' })).toMatchObject({
    edit: { ...of, edit: 'propose tee', teeSet: 'back' },
  });
  expect(takenOut(ROUTING, { hole: 'h1', part: 'green' }).kind).toBe('refused');
});

test('holes of the round go to the tray in one step and stay picked out; spare ones go off the plan', () => {
  const both = takenOut(ROUTING, { hole: 'h2', also: ['h1'] });
  expect(both).toEqual({
    kind: 'edit',
    edit: {
      edit: 'several',
      does: 'take out 2 holes',
      edits: [
        { edit: 'take out', routing: 'a', hole: 'h1' },
        { edit: 'take out', routing: 'a', hole: 'h2' },
      ],
    },
    select: { hole: 'h2', also: ['h1'] },
  });
  expect(takenOut(ROUTING, { hole: 's1' })).toEqual({
    kind: 'edit',
    edit: { edit: 'remove hole', routing: 'a', hole: 's1' },
    select: {},
  });
});

test('with nothing picked out nothing is taken out', () => {
  expect(takenOut(ROUTING, {})).toEqual({ kind: 'nothing' });
});
