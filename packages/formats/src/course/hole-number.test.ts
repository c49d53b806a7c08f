import { expect, test } from 'vitest';
import { mappedNumber, nameBesideNumber } from './hole-number.ts';

test.each([
  [{ ref: '7' }, { group: '', number: 7, from: 'ref', others: false }],
  [{ ref: ' 07 ' }, { group: '', number: 7, from: 'ref', others: false }],
  [{ ref: 'A7' }, { group: 'A', number: 7, from: 'ref', others: false }],
  [{ ref: 'Blue 3' }, { group: 'BLUE', number: 3, from: 'ref', others: false }],
  [{ ref: '9b' }, { group: 'B', number: 9, from: 'ref', others: false }],
  [{ ref: 'Hole 12' }, { group: '', number: 12, from: 'ref', others: false }],
  [{ ref: '3;12' }, { group: '', number: 3, from: 'ref', others: true }],
  [{ name: 'Hole 11 - The Gap' }, { group: '', number: 11, from: 'name', others: false }],
  [{ name: '5th' }, { group: '', number: 5, from: 'name', others: false }],
  [
    { ref: 'x', name: '4' },
    { group: '', number: 4, from: 'name', others: false },
  ],
  [{ name: 'The Gap of 1897' }, undefined],
  [{ ref: '0' }, undefined],
  [{ ref: '123' }, undefined],
  [{}, undefined],
])('%j is numbered %j', (tags, number) => {
  expect(mappedNumber(tags)).toEqual(number);
});

test('a name is kept when it says more than the number', () => {
  expect(nameBesideNumber({ name: 'Hole 11 - The Gap' })).toBe('Hole 11 - The Gap');
  expect(nameBesideNumber({ name: 'Hole 11' })).toBeUndefined();
  expect(nameBesideNumber({ name: '5th' })).toBeUndefined();
  expect(nameBesideNumber({ name: '<b>Burn</b>' })).toBe('<b>Burn</b>');
});
