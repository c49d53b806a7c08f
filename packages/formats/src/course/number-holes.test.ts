import { expect, test } from 'vitest';
import { noteBook } from '../note.ts';
import type { HoleInHand } from './hole-in-hand.ts';
import { mappedNumber } from './hole-number.ts';
import { loopsOf } from './loops-of.ts';
import { numberedHoles } from './number-holes.ts';

/** A hole from one place along a line of holes to another: tee and green by their metres east. */
const hole = (ref: string | undefined, from: number, to: number): HoleInHand => {
  const tags = ref === undefined ? {} : { ref };
  return {
    tags,
    line: [
      { x: from, y: 0 },
      { x: to, y: 0 },
    ],
    mapped: mappedNumber(tags),
  };
};

const starts = (holes: readonly HoleInHand[]) => {
  const [group] = numberedHoles(holes, noteBook()).groups;
  return group?.holes.map(({ number, hole: { line } }) => [number, line[0]?.x]);
};

test('of two holes 2 with no hole 3, the one that follows hole 1 keeps its number and the other is hole 3', () => {
  const holes = [hole('2', 800, 1150), hole('2', 400, 750), hole('1', 0, 350), hole('4', 1200, 1500)];
  expect(starts(holes)).toEqual([
    [1, 0],
    [2, 400],
    [3, 800],
    [4, 1200],
  ]);
});

test('of two holes 3 with no hole 2, the one that leads on to hole 4 keeps its number', () => {
  const holes = [hole('3', 400, 750), hole('3', 800, 1150), hole('1', 0, 350), hole('4', 1200, 1500)];
  expect(starts(holes)?.map(([number]) => number)).toEqual([1, 2, 3, 4]);
  expect(starts(holes)?.[1]).toEqual([2, 400]);
});

test('holes without numbers fill the gaps by the shortest walk, then come last', () => {
  const holes = [hole(undefined, 800, 1150), hole('1', 0, 350), hole(undefined, 400, 750), hole('4', 1200, 1500)];
  expect(starts(holes)).toEqual([
    [1, 0],
    [2, 400],
    [3, 800],
    [4, 1200],
  ]);
});

test('a number that nobody has is told, and the holes after it move up', () => {
  const notes = noteBook();
  numberedHoles([hole('1', 0, 350), hole('3', 400, 750)], notes);
  expect(notes.all()).toEqual([{ what: 'Hole 2 is not in the file: on the board the holes after move up.' }]);
});

test.each([
  [1, ['Round'], [1]],
  [9, ['Round'], [9]],
  [12, ['Out', 'In'], [9, 3]],
  [18, ['Out', 'In'], [9, 9]],
  [27, ['A', 'B', 'C'], [9, 9, 9]],
  [36, ['A', 'B', 'C', 'D'], [9, 9, 9, 9]],
])('%i numbered holes make the loops %j', (count, names, sizes) => {
  const holes = Array.from({ length: count }, (_, index) => hole(String(index + 1), index * 400, index * 400 + 350));
  const { loops } = loopsOf(numberedHoles(holes, noteBook()), noteBook());
  expect(loops.map(({ name }) => name)).toEqual(names);
  expect(loops.map((loop) => loop.holes.length)).toEqual(sizes);
});

test('a nineteenth hole is a spare one', () => {
  const holes = Array.from({ length: 19 }, (_, index) => hole(String(index + 1), index * 400, index * 400 + 350));
  const { loops, spare } = loopsOf(numberedHoles(holes, noteBook()), noteBook());
  expect(loops.map((loop) => loop.holes.length)).toEqual([9, 9]);
  expect(spare).toHaveLength(1);
});
