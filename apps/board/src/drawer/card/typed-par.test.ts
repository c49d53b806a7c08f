import { expect, test } from 'vitest';
import { typedPar } from './typed-par.ts';

test.each([
  ['4', 4],
  [' 3 ', 3],
  ['', 'by length'],
  ['By length', 'by length'],
])('%j sets par %s', (typed, par) => {
  expect(typedPar(typed)).toEqual({ kind: 'par', par });
});

test.each(['2', '7', 'four', '4.5', '44', 'toString'])('%j is no par, and says why', (typed) => {
  expect(typedPar(typed)).toMatchObject({ kind: 'wrong', why: expect.stringMatching(/3, 4, 5 or 6/) });
});
