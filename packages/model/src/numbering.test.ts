import { expect, test } from 'vitest';
import type { Hole } from './hole.ts';
import { holeOf, loopsOf, numberHoles, playingOrder } from './numbering.ts';
import type { Loop, Round, Routing } from './plan.ts';

const NINE = [1, 2, 3, 4, 5, 6, 7, 8, 9];

function nine(id: string): Loop {
  return { id, name: id.toUpperCase(), holes: NINE.map((n) => `${id}${n}`) };
}

function hole(id: string): Hole {
  return {
    id,
    seat: { in: 'spare', key: 'a0' },
    tees: {},
    turnPoints: [],
    par: { men: 'by length', women: 'by length' },
    verdict: 'undecided',
    pinned: [],
    waypoints: [],
    relations: [],
  };
}

const round = (id: string, ...loops: string[]): Round => ({ id, name: loops.join(' + '), loops });

function routing(loops: readonly Loop[], rounds: readonly Round[], spare: readonly string[] = []): Routing {
  const holes = [...loops.flatMap((loop) => loop.holes), ...spare].sort().map(hole);
  return { id: 'r', name: 'R', locked: false, loops, rounds, holes, spare };
}

const twentySeven = routing(
  [nine('a'), nine('b'), nine('c')],
  [round('ab', 'a', 'b'), round('bc', 'b', 'c'), round('ca', 'c', 'a')],
  ['spare'],
);

test('27 holes: each hole has the number of the first round that plays it', () => {
  const numbers = numberHoles(twentySeven);
  expect(NINE.map((n) => numbers.get(`a${n}`))).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  expect(NINE.map((n) => numbers.get(`b${n}`))).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18]);
  // The nine C is first played in B + C, as the second nine of it.
  expect(NINE.map((n) => numbers.get(`c${n}`))).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18]);
  expect(numbers.size).toBe(27);
});

test('a spare hole has no number', () => {
  expect(numberHoles(twentySeven).has('spare')).toBe(false);
});

test('a loop that no round plays is numbered by itself', () => {
  const numbers = numberHoles(routing([nine('a'), nine('b')], [round('a', 'a')]));
  expect(numbers.get('b1')).toBe(1);
  expect(numbers.get('b9')).toBe(9);
});

test('the playing order of B + C is nine of B, then nine of C', () => {
  expect(playingOrder(twentySeven, round('bc', 'b', 'c'))).toEqual([...nine('b').holes, ...nine('c').holes]);
});

test('a loop that is gone is left out of its round', () => {
  expect(loopsOf(twentySeven, round('ax', 'a', 'gone')).map(({ id }) => id)).toEqual(['a']);
});

test('swapping the nines of a round swaps their numbers', () => {
  const swapped = numberHoles(routing([nine('a'), nine('b')], [round('ba', 'b', 'a')]));
  expect(swapped.get('b1')).toBe(1);
  expect(swapped.get('a1')).toBe(10);
});

test('an empty course has no numbers', () => {
  expect(numberHoles(routing([], [])).size).toBe(0);
  expect(playingOrder(routing([], []), round('ab', 'a', 'b'))).toEqual([]);
});

test('every hole is found by its id, and nothing else is', () => {
  for (const { id } of twentySeven.holes) expect(holeOf(twentySeven, id)?.id).toBe(id);
  for (const id of ['', 'a', 'a0', 'a55', 'zz']) expect(holeOf(twentySeven, id)).toBeUndefined();
});
