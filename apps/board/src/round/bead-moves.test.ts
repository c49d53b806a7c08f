import type { Hole, Routing } from '@loopwright/model';
import { expect, test } from 'vitest';
import { editFor, editForSeveral, lastPlace, placeAmong, placeBeside, placeOf, placesFor } from './bead-moves.ts';

const hole = (id: string, seat: Hole['seat']): Hole => ({
  id,
  seat,
  tees: {},
  turnPoints: [],
  par: { men: 'by length', women: 'by length' },
  verdict: 'undecided',
  pinned: [],
  waypoints: [],
  relations: [],
});
const inLoop = (id: string, loop: string) => hole(id, { in: 'loop', loop, key: id });

/** Front: a b; back: c; the tray: s. */
const ROUTING: Routing = {
  id: 'r',
  name: 'Routing A',
  locked: false,
  loops: [
    { id: 'front', name: 'Front', holes: ['a', 'b'] },
    { id: 'back', name: 'Back', holes: ['c'] },
  ],
  rounds: [{ id: 'round', name: 'Round', loops: ['front', 'back'] }],
  holes: [inLoop('a', 'front'), inLoop('b', 'front'), inLoop('c', 'back'), hole('s', { in: 'spare', key: 's' })],
  spare: ['s'],
};

test('a bead knows its place', () => {
  expect(placeOf(ROUTING, 'b')).toEqual({ in: 'loop', loop: 'front', after: 'a' });
  expect(placeOf(ROUTING, 'c')).toEqual({ in: 'loop', loop: 'back', after: 'first' });
  expect(placeOf(ROUTING, 's')).toEqual({ in: 'tray' });
  expect(placeOf(ROUTING, 'gone')).toBeUndefined();
});

test('a bead may go anywhere but after itself', () => {
  expect(placesFor(ROUTING, ['a'])).toEqual([
    { in: 'loop', loop: 'front', after: 'first' },
    { in: 'loop', loop: 'front', after: 'b' },
    { in: 'loop', loop: 'back', after: 'first' },
    { in: 'loop', loop: 'back', after: 'c' },
    { in: 'tray' },
  ]);
});

test('putting a bead down where it was is no edit', () => {
  expect(editFor(ROUTING, 'b', { in: 'loop', loop: 'front', after: 'a' })).toBeUndefined();
  expect(editFor(ROUTING, 's', { in: 'tray' })).toBeUndefined();
});

test('a hole of the round moves, a spare hole comes back, the tray takes out', () => {
  const after = { in: 'loop', loop: 'back', after: 'c' } as const;
  expect(editFor(ROUTING, 'a', after)).toEqual({
    edit: 'move in the round',
    routing: 'r',
    hole: 'a',
    loop: 'back',
    after: 'c',
  });
  expect(editFor(ROUTING, 's', after)?.edit).toBe('bring back');
  expect(editFor(ROUTING, 'a', { in: 'tray' })).toEqual({ edit: 'take out', routing: 'r', hole: 'a' });
});

test('arrow keys step through every place and stop at the ends', () => {
  const start = placeOf(ROUTING, 'a') ?? { in: 'tray' };
  expect(placeBeside(ROUTING, ['a'], start, -1)).toEqual(start);
  const down = placeBeside(ROUTING, ['a'], start, 1);
  expect(down).toEqual({ in: 'loop', loop: 'front', after: 'b' });
  expect(placeBeside(ROUTING, ['a'], { in: 'tray' }, 1)).toEqual({ in: 'tray' });
});

test('a spare hole comes back last unless told otherwise', () => {
  expect(lastPlace(ROUTING)).toEqual({ in: 'loop', loop: 'back', after: 'c' });
  expect(lastPlace({ ...ROUTING, loops: [] })).toBeUndefined();
});

test('several beads go to one place in their order, as one step', () => {
  expect(editForSeveral(ROUTING, ['a', 'b'], { in: 'loop', loop: 'back', after: 'c' })).toEqual({
    edit: 'several',
    does: 'renumber 2 holes',
    edits: [
      { edit: 'move in the round', routing: 'r', hole: 'a', loop: 'back', after: 'c' },
      { edit: 'move in the round', routing: 'r', hole: 'b', loop: 'back', after: 'a' },
    ],
  });
});

test('several beads that follow each other there already make no step; the tray takes out those in the round', () => {
  expect(editForSeveral(ROUTING, ['a', 'b'], { in: 'loop', loop: 'front', after: 'first' })).toBeUndefined();
  expect(editForSeveral(ROUTING, ['c', 's'], { in: 'tray' })).toEqual({ edit: 'take out', routing: 'r', hole: 'c' });
  expect(editForSeveral(ROUTING, ['s'], { in: 'tray' })).toBeUndefined();
});

test('one of several is placed by the hole before it that stays', () => {
  expect(placeAmong(ROUTING, 'b', ['a', 'b'])).toEqual({ in: 'loop', loop: 'front', after: 'first' });
});
