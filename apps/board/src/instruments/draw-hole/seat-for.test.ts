import type { Loop, Routing } from '@loopwright/model';
import { expect, test } from 'vitest';
import { placeBetween, placeChoices, seatFor } from './seat-for.ts';

const loop = (id: string, count: number): Loop => ({
  id,
  name: id,
  holes: Array.from({ length: count }, (_, index) => `${id}-${index + 1}`),
});

const routing = (loops: readonly Loop[]): Routing => ({
  id: 'r1',
  name: 'A',
  locked: false,
  loops,
  rounds: [{ id: 'o1', name: 'Round', loops: loops.map(({ id }) => id) }],
  holes: [],
  spare: [],
});

const NEXT = { kind: 'next' } as const;

test('the first hole of an empty board is hole 1', () => {
  expect(seatFor(routing([loop('out', 0), loop('in', 0)]), NEXT)).toEqual({
    seat: { loop: 'out', after: 'first' },
    number: 1,
  });
});

test('a new hole takes the next place', () => {
  expect(seatFor(routing([loop('out', 4), loop('in', 0)]), NEXT)).toEqual({
    seat: { loop: 'out', after: 'out-4' },
    number: 5,
    after: 'out-4',
  });
});

test('after nine holes of a nine the next loop is begun', () => {
  expect(seatFor(routing([loop('out', 9), loop('in', 0)]), NEXT)).toEqual({
    seat: { loop: 'in', after: 'first' },
    number: 10,
    after: 'out-9',
  });
});

test('when both nines are full it is spare; a loop that is longer than a nine holds eighteen', () => {
  expect(seatFor(routing([loop('out', 9), loop('in', 9)]), NEXT)).toEqual({ seat: 'spare' });
  expect(seatFor(routing([loop('nine', 9)]), NEXT)).toEqual({ seat: 'spare' });
  expect(seatFor(routing([loop('all', 10)]), NEXT).number).toBe(11);
  expect(seatFor(routing([loop('all', 17)]), NEXT).number).toBe(18);
  expect(seatFor(routing([loop('all', 18)]), NEXT)).toEqual({ seat: 'spare' });
});

test('the chosen hole is followed, also in a full nine', () => {
  const seat = seatFor(routing([loop('out', 9), loop('in', 9)]), { kind: 'after', hole: 'in-2' });
  expect(seat).toEqual({ seat: { loop: 'in', after: 'in-2' }, number: 12, after: 'in-2' });
});

test('the hole being drawn does not sit after itself', () => {
  expect(seatFor(routing([loop('out', 3)]), NEXT, 'out-3').number).toBe(3);
});

test('a chosen hole that somebody took away gives the next place', () => {
  expect(seatFor(routing([loop('out', 3)]), { kind: 'after', hole: 'gone' }).number).toBe(4);
});

test('a routing without loops takes spare holes', () => {
  expect(seatFor(routing([]), NEXT)).toEqual({ seat: 'spare' });
});

test('every place in the round can be chosen', () => {
  expect(placeChoices(routing([loop('out', 2)])).map(({ words }) => words)).toEqual([
    'the next place',
    'after hole 1',
    'after hole 2',
    'spare, out of the round',
  ]);
});

test('between two holes that were picked out, when one follows the other', () => {
  const nines = routing([loop('out', 4), loop('in', 2)]);
  expect(placeBetween(nines, ['out-3', 'out-2'])).toEqual({ kind: 'after', hole: 'out-2' });
  expect(placeBetween(nines, ['out-1', 'out-3'])).toBeUndefined();
  expect(placeBetween(nines, ['out-4', 'in-1'])).toBeUndefined();
  expect(placeBetween(nines, ['out-1'])).toBeUndefined();
});
