import { expect, test } from 'vitest';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import { openGreenOutline } from './open-green-outline.ts';

/** Presses at these corners and ends the outline. */
function drawn(corners: readonly (readonly [number, number])[], selection = { hole: 'h1' }) {
  const fake = openFakeBench({ selection });
  const running = openGreenOutline().instrument.start(fake.bench);
  for (const [x, y] of corners) running.press(mouseAt(x, y), undefined)?.end(mouseAt(x, y));
  running.finish?.();
  return fake;
}

/** Round the middle of green 1, which lies at (0, 365.76). */
const ROUND = [
  [-10, 350],
  [12, 350],
  [12, 380.76],
  [-10, 380.76],
] as const;

test('an outline is kept relative to the middle of the green, and the hand is bare again', () => {
  const { written, isAway } = drawn(ROUND);
  expect(written).toEqual([
    {
      edit: 'shape green',
      routing: 'a',
      hole: 'h1',
      shape: {
        length: 30.76,
        width: 22,
        bearing: 0,
        outline: [
          { x: -10, y: -15.76 },
          { x: 12, y: -15.76 },
          { x: 12, y: 15 },
          { x: -10, y: 15 },
        ],
      },
    },
  ]);
  expect(isAway()).toBe(true);
});

test('an outline that leaves the middle out is not taken, and says why', () => {
  const { written, said } = drawn(ROUND.map(([x, y]) => [x + 60, y] as const));
  expect(written).toEqual([]);
  expect(said.at(-1)).toMatch(/middle of green 1 must lie inside/);
});

test('without a hole that has a green there is nothing to draw', () => {
  const { written, said } = drawn(ROUND, { hole: 's1' });
  expect(written).toEqual([]);
  expect(said.at(-1)).toMatch(/Choose one hole/);
});
