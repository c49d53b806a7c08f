// What runs in the frame on every screen must give the same on every screen: no clock, no chance, no locale, no page,
// and no function whose last digits differ between engines.
import { expect, test } from 'vitest';
import { CODE, reachedFrom } from './imports-of.ts';
import { PACKAGES } from './packages.ts';
import { codeOnly, foundIn, type SourceFile } from './source-files.ts';

const PURE = new Set(['model', 'geometry', 'ground', 'analysis', 'search'].map((name) => `packages/${name}`));
const reached = reachedFrom(
  PACKAGES.filter(({ home }) => PURE.has(home)).flatMap(({ entries }) => [...entries.values()]),
);
const PURE_CODE = CODE.filter(({ path }) => reached.has(path));
const code = (file: SourceFile) => codeOnly(file.text);

/** Files that use such a function and round what comes of it, 1 mm or 1e-6, before anybody sees it. */
const ROUNDS_WHAT_REMAINS = new Set(['packages/analysis/src/walk/walking-speed.ts']);

const DIFFERS =
  /\bMath\.(?:sinh?|cosh?|tanh?|asinh?|acosh?|atanh?|atan2|exp|expm1|log|log2|log10|log1p|pow|hypot|cbrt)\b/g;

test('the pure packages reach files at all', () => {
  expect(PURE_CODE.length).toBeGreaterThan(50);
});

test('no clock, no chance and no locale in the pure packages', () => {
  const banned =
    /\bnew Date\b|\bDate\s*[.(]|\bMath\.random\b|\bIntl\b|\bperformance\b|\bset(?:Timeout|Interval)\b|\btoLocale\w+|\blocaleCompare\b/g;
  expect(foundIn(PURE_CODE, banned, code)).toEqual([]);
});

test('no page, no process and no console in the pure packages', () => {
  const banned =
    /(?<![.\w])(?:window|document|navigator|localStorage|indexedDB|process|globalThis|fetch|crypto|console|require|Buffer)\s*[.([]/g;
  expect(foundIn(PURE_CODE, banned, code)).toEqual([]);
});

// Measured: hypot, sin, cos, tan and pow differ between three engines; atan2, exp and log in one of them.
test('engines disagree about sines, powers and logarithms, so they stand only where they are rounded', () => {
  const elsewhere = PURE_CODE.filter(({ path }) => !ROUNDS_WHAT_REMAINS.has(path));
  expect(foundIn(elsewhere, DIFFERS, code)).toEqual([]);
});

test('a file that may use them does, and rounds', () => {
  const allowed = PURE_CODE.filter(({ path }) => ROUNDS_WHAT_REMAINS.has(path));
  expect(allowed).toHaveLength(ROUNDS_WHAT_REMAINS.size);
  for (const file of allowed) {
    expect(foundIn([file], DIFFERS, code), file.path).not.toEqual([]);
    expect(code(file), file.path).toMatch(/Math\.round\(|toMillimetre\(/);
  }
});

test('no mutable state in a module of the pure packages', () => {
  expect(foundIn(PURE_CODE, /^(?:export )?(?:let|var) \w+/gm, code)).toEqual([]);
});
