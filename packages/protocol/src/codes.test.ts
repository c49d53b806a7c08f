import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { CLOSE_CODES, closeWords, isPermanentClose } from './close-codes.ts';
import { HTTP_ERRORS } from './http-errors.ts';
import { LIMITS } from './limits.ts';
import { REFUSALS } from './refusals.ts';

const listed = (heading: string, row: RegExp): string[] => {
  const page = readFileSync(new URL('../ERRORS.md', import.meta.url), 'utf8');
  const section = page.split('\n## ').find((part) => part.startsWith(heading)) ?? '';
  return [...section.matchAll(row)].map((match) => `${match[1]} ${match[2] ?? ''}`.trim()).sort();
};

test('ERRORS.md lists every close code, and no other', () => {
  const codes = Object.entries(CLOSE_CODES).map(([name, reason]) => `${reason.code} ${name}`);
  expect(listed('Close codes', /^\| *(\d+) *\| *`([a-z-]+)` *\|/gm)).toEqual(codes.sort());
});

test('ERRORS.md lists every refusal, and no other', () => {
  expect(listed('Refusals', /^\| *`([a-z-]+)` *\|/gm)).toEqual(Object.keys(REFUSALS).sort());
});

test('ERRORS.md lists every HTTP answer, and no other', () => {
  const codes = Object.entries(HTTP_ERRORS).map(([name, error]) => `${error.status} ${name}`);
  expect(listed('HTTP', /^\| *(\d+) *\| *`([a-z-]+)` *\|/gm)).toEqual(codes.sort());
});

test('a close of 4400–4499 is for good, any other is tried again (X5)', () => {
  expect([4400, 4410, 4499].every(isPermanentClose)).toBe(true);
  expect([1000, 1006, 4399, 4500, 4502].some(isPermanentClose)).toBe(false);
});

test('every close has a sentence for the person, also one this page does not know', () => {
  for (const code of [4400, 4403, 4477, 1006, 4502]) expect(closeWords(code)).toMatch(/^[A-Z].+\.$/);
});

test('every limit is a positive whole number', () => {
  for (const limit of Object.values(LIMITS)) expect(Number.isInteger(limit) && limit > 0).toBe(true);
});
