// What a reader of this house may count on. Each failure names file and line.
import { expect, test } from 'vitest';
import { CODE } from './imports-of.ts';
import { codeOnly, filesMatching, foundIn, isTest, isThere, type SourceFile } from './source-files.ts';

const code = (file: SourceFile) => codeOnly(file.text);
const LONGEST = 400;
const MEDIAN_UNDER = 100;

const lines = (file: SourceFile) => file.text.split('\n').length - 1;
const STYLED = [...CODE, ...filesMatching(/^(packages|apps|tests)\/.*\.css$/)];

test(`no file of code is longer than ${LONGEST} lines`, () => {
  expect(STYLED.filter((file) => lines(file) > LONGEST).map((file) => `${file.path}: ${lines(file)} lines`)).toEqual(
    [],
  );
});

test('half of the source files are short', () => {
  const lengths = CODE.filter(({ path }) => !isTest(path) && path.includes('/src/')).map(lines);
  lengths.sort((a, b) => a - b);
  expect(lengths[lengths.length >> 1]).toBeLessThan(MEDIAN_UNDER);
});

test('no drawers for what has no home', () => {
  const drawer = /(^|\/)([\w-]+-)?(utils?|helpers?)(\.|\/|$)|(^|\/)(common|shared|misc|stuff)(\.|\/|$)/i;
  const paths = filesMatching(/^(packages|apps|tests|infra)\//).map(({ path }) => path);
  expect(paths.filter((path) => drawer.test(path))).toEqual([]);
});

test('named exports only', () => {
  const sources = CODE.filter(({ path }) => !/\.config\.ts$/.test(path));
  expect(foundIn(sources, /^\s*export default\b|\bas default\b/gm, code)).toEqual([]);
});

test('unions, not enums; no namespaces', () => {
  expect(foundIn(CODE, /^\s*(?:export )?(?:declare )?(?:const )?(?:enum|namespace) \w+/gm, code)).toEqual([]);
});

test('what is to be done stands in an issue, not in the code', () => {
  expect(foundIn(CODE, /\b(?:TO[D]O|FIX[M]E|X[X]X)\b/g)).toEqual([]);
});

test('no test sleeps', () => {
  const unit = CODE.filter(({ path }) => /^(packages|apps)\//.test(path) && isTest(path));
  expect(foundIn(unit, /\bset(?:Timeout|Interval)\(/g, code)).toEqual([]);
});

test('every package and app has a page of its own', () => {
  const homes = new Set(
    filesMatching(/^(packages|apps)\/[^/]+\//).map(({ path }) => path.split('/').slice(0, 2).join('/')),
  );
  expect([...homes].filter((home) => !isThere(`${home}/README.md`))).toEqual([]);
});

test('nothing else at the top', () => {
  const allowed = new Set([
    ...['README.md', 'DEVELOPERS.md', 'CHANGELOG.md', 'package.json', 'package-lock.json', 'tsconfig.json'],
    ...['biome.json', 'knip.json', 'vitest.config.ts', '.gitignore', '.npmrc', '.gitattributes', '.editorconfig'],
  ]);
  expect(
    filesMatching(/^[^/]+$/)
      .map(({ path }) => path)
      .filter((path) => !allowed.has(path)),
  ).toEqual([]);
});
