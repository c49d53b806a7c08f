// Documents are tested: what they name must exist. Each failure names file and line.
import { posix } from 'node:path';
import { expect, test } from 'vitest';
import { PACKAGES } from './packages.ts';
import { filesMatching, foundIn, isThere, placeIn, type SourceFile } from './source-files.ts';

const DOCUMENTS = filesMatching(/\.md$/);
const TEXTS = filesMatching(/\.(md|ts|tsx|mjs|css|html|json|yml|yaml)$|(^|\/)\.ci\//).filter(
  ({ path }) => path !== 'package-lock.json',
);

interface Mention {
  readonly of: string;
  readonly at: string;
}

function mentions(file: SourceFile, pattern: RegExp): readonly Mention[] {
  return [...file.text.matchAll(pattern)].flatMap((match) =>
    match[1] === undefined ? [] : [{ of: match[1], at: placeIn(file, match.index) }],
  );
}

test('every link inside the repository leads somewhere', () => {
  const dead = DOCUMENTS.flatMap((file) =>
    mentions(file, /\]\(([^)\s#]+)[^)]*\)/g)
      .filter(({ of }) => !/^[a-z]+:/.test(of))
      .filter(({ of }) => !isThere(posix.join(posix.dirname(file.path), of)))
      .map(({ at, of }) => `${at}: ${of}`),
  );
  expect(dead).toEqual([]);
});

test('every path written as code is there', () => {
  const path = /`((?:(?:packages|apps|tests|infra)\/|\.ci\/|src\/)[\w./-]*\w\/?)`/g;
  const missing = DOCUMENTS.flatMap((file) =>
    mentions(file, path)
      .filter(({ of }) => !/(^|\/)dist(\/|$)/.test(of))
      .filter(({ of }) => !isThere(of.startsWith('src/') ? posix.join(posix.dirname(file.path), of) : of))
      .map(({ at, of }) => `${at}: ${of}`),
  );
  expect(missing).toEqual([]);
});

test('every package named is one of ours', () => {
  const known = new Set(PACKAGES.flatMap(({ name, entries }) => [name, ...entries.keys()]));
  const places = new Set(['@loopwright/ground', '@loopwright/search']);
  const unknown = DOCUMENTS.flatMap((file) =>
    mentions(file, /(@loopwright\/[\w/-]+)/g)
      .filter(({ of }) => !known.has(of) && !places.has(of))
      .map(({ at, of }) => `${at}: ${of}`),
  );
  expect(unknown).toEqual([]);
});

test('every script a document tells to run is in package.json', () => {
  const [manifest] = filesMatching(/^package\.json$/);
  const scripts: Readonly<Record<string, string>> = JSON.parse(manifest?.text ?? '{}').scripts ?? {};
  const missing = DOCUMENTS.flatMap((file) =>
    mentions(file, /`(?:\w+=\S+ )?npm run ([\w:-]+)`/g)
      .filter(({ of }) => !(of in scripts))
      .map(({ at, of }) => `${at}: npm run ${of}`),
  );
  expect(missing).toEqual([]);
});

test('a close code named in a document is in the list of codes', () => {
  const [list] = filesMatching(/^packages\/protocol\/ERRORS\.md$/);
  const known = new Set([...(list?.text ?? '').matchAll(/^\| (4[45]\d\d) \|/gm)].map(([, code]) => code));
  // 4400, 4499, 4500 and 4599 also stand for the ends of their ranges.
  const ends = new Set(['4400', '4499', '4500', '4599']);
  const unknown = DOCUMENTS.flatMap((file) =>
    mentions(file, /\b(4[45]\d\d)\b(?! ?(?:yd|m|holes|shots))/g)
      .filter(({ of }) => !known.has(of) && !ends.has(of))
      .map(({ at, of }) => `${at}: ${of}`),
  );
  expect(known.size).toBeGreaterThan(5);
  expect(unknown).toEqual([]);
});

test('no machine, home folder or registry is named', () => {
  const local = new RegExp(
    [
      String.raw`(?<![\w.])/(?:home|root|Users|work|tmp|var/folders)/[\w.-]+`,
      String.raw`\b[A-Z]:\\\\?[A-Za-z]`,
      String.raw`\bregistry\.[a-z0-9-]+\.[a-z]+`,
    ].join('|'),
    'g',
  );
  const others = TEXTS.filter(({ path }) => path !== 'tests/boundaries/documents.test.ts');
  expect(foundIn(others, local)).toEqual([]);
});

test('decision notes are numbered once, and say context, decision, price and when to look again', () => {
  const notes = filesMatching(/^infra\/decisions\/.*\.md$/);
  const numbers = notes.map(({ path }) => path.match(/\/(\d{4})-[a-z0-9-]+\.md$/)?.[1] ?? path);
  expect(numbers.filter((number, index) => numbers.indexOf(number) !== index)).toEqual([]);
  const unlike = notes.flatMap(({ path, text }) =>
    ['Context', 'Decision', 'Price', 'Revisit when']
      .filter((part) => !new RegExp(`^(?:#+ |\\*\\*)${part}`, 'm').test(text))
      .map((part) => `${path}: ${part}`),
  );
  expect(unlike).toEqual([]);
});
