import { expect, test } from 'vitest';
import { meaningOf } from '../tools/keys.ts';
import { INSTRUMENT_LETTERS, instrumentOf, SNAP_LETTER } from './letters.ts';

const letters = [...Object.values(INSTRUMENT_LETTERS), SNAP_LETTER];

test('no two instruments share a key', () => {
  expect(new Set(letters).size).toBe(letters.length);
});

test.each(letters)('%s means nothing else on the board', (key) => {
  expect(meaningOf({ key, ctrlKey: false, metaKey: false, shiftKey: false, altKey: false })).toBeUndefined();
});

test('a letter takes its instrument, another key none', () => {
  expect(instrumentOf('d')).toBe('draw hole');
  expect(instrumentOf('z')).toBeUndefined();
  expect(instrumentOf('constructor')).toBeUndefined();
});
