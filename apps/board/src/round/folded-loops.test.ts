import { expect, test } from 'vitest';
import { foldedWords, readFolded, turnFolded } from './folded-loops.ts';

test('folded loops are kept and read again', () => {
  const folded = turnFolded(turnFolded(new Set(), 'front'), 'back');
  expect([...readFolded(foldedWords(folded))]).toEqual(['front', 'back']);
  expect([...turnFolded(folded, 'front')]).toEqual(['back']);
});

test.each(['', 'not json', '{"a":1}', '[1,null,"No id!"]'])('%j is no list of folded loops', (kept) => {
  expect(readFolded(kept).size).toBe(0);
});
