import { expect, test } from 'vitest';
import { openPictureTurns } from './picture-turns.ts';

test('alone and among few, every picture moves everything on', () => {
  const turn = openPictureTurns();
  expect([0, 1, 3, 2].map(turn)).toEqual(['both', 'both', 'both', 'both']);
});

test('in a crowd hands and figures take turns', () => {
  const turn = openPictureTurns();
  expect([10, 10, 10, 10].map(turn)).toEqual(['hands', 'figures', 'hands', 'figures']);
});

test('when the crowd lets go, the figures still follow the last hands', () => {
  const turn = openPictureTurns();
  expect([10, 0, 0].map(turn)).toEqual(['hands', 'figures', 'both']);
});
