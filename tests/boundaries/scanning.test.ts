// The other tests here are as good as their reading of code: this one reads code made for it.
import { expect, test } from 'vitest';
import { CODE, importsOf, pathOf, reachedFrom } from './imports-of.ts';
import { codeOnly, foundIn, homeOf, isTest } from './source-files.ts';

const QUOTE = "'";
const file = (...lines: readonly string[]) => ({
  path: 'packages/geometry/src/made.ts',
  text: lines.join('\n').replaceAll('"', QUOTE),
});

test('every way of naming a module is seen, with its line', () => {
  const made = file(
    'import { a } from "@loopwright/model";',
    'import type {',
    '  B,',
    '  C,',
    '} from "./c.ts";',
    'export { d } from "yjs";',
    'export * from "../e.ts";',
    'import "./styles.css";',
    'const later = await import("lib0/encoding");',
    'const from = "not one";',
  );
  expect(importsOf(made).map(({ of, at }) => `${at} ${of}`)).toEqual([
    'packages/geometry/src/made.ts:1 @loopwright/model',
    'packages/geometry/src/made.ts:2 ./c.ts',
    'packages/geometry/src/made.ts:6 yjs',
    'packages/geometry/src/made.ts:7 ../e.ts',
    'packages/geometry/src/made.ts:8 ./styles.css',
    'packages/geometry/src/made.ts:9 lib0/encoding',
  ]);
});

test('a relative import is followed from the top', () => {
  const [found] = importsOf(file('import { a } from "../../analysis/src/a.ts";'));
  expect(found && pathOf(found)).toBe('packages/analysis/src/a.ts');
  expect(homeOf('packages/analysis/src/a.ts')).toBe('packages/analysis');
  expect(homeOf('tests/golden/a.ts')).toBe('tests');
});

test('words in comments and strings are not code, and lines keep their numbers', () => {
  const made = file('/* Math.hypot', ' new Date() */', 'const a = "Math.sin"; // Math.cos', 'const b = Math.tan(1);');
  expect(foundIn([made], /Math\.\w+|new Date/g, ({ text }) => codeOnly(text))).toEqual([
    'packages/geometry/src/made.ts:4: Math.tan',
  ]);
});

test('what a package reaches is without its tests', () => {
  const reached = reachedFrom(['packages/model/src/index.ts']);
  expect(reached.has('packages/model/src/units.ts')).toBe(true);
  expect([...reached].filter(isTest)).toEqual([]);
  expect([...reached].every((path) => path.startsWith('packages/model/'))).toBe(true);
  expect(CODE.length).toBeGreaterThan(reached.size);
});
