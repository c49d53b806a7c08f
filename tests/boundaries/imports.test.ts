// Imports point down. The table is the design's; an import that is not in it fails here, with its file and line.
import { builtinModules } from 'node:module';
import { expect, test } from 'vitest';
import { CODE, IMPORTS, type Import, pathOf } from './imports-of.ts';
import { PACKAGES } from './packages.ts';
import { filesMatching, homeOf, isTest } from './source-files.ts';

/** Home → what of ours it may import. Apps: everything but testkit, and of the document only their own side. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  'packages/model': [],
  'packages/protocol': [],
  'packages/geometry': ['model'],
  'packages/ground': ['model', 'geometry'],
  'packages/analysis': ['model', 'geometry', 'ground'],
  'packages/search': ['model', 'geometry', 'ground', 'analysis', 'analysis/wording'],
  'packages/formats': ['model', 'geometry'],
  'packages/document': ['model', 'protocol'],
  'packages/demo': ['model', 'geometry', 'ground'],
  'packages/testkit': [
    ...['model', 'geometry', 'ground', 'analysis', 'protocol', 'formats', 'demo'],
    ...['document', 'document/client', 'document/server'],
  ],
  'apps/board': [
    ...['model', 'geometry', 'ground', 'analysis', 'analysis/wording', 'search', 'protocol', 'formats', 'demo'],
    ...['document', 'document/client', 'formats/image'],
  ],
  'apps/server': [
    ...['model', 'geometry', 'ground', 'analysis', 'analysis/wording', 'search', 'protocol', 'formats', 'demo'],
    ...['document', 'document/server', 'formats/image'],
  ],
  'apps/cli': ['model', 'geometry', 'ground', 'analysis', 'analysis/wording', 'search', 'formats', 'document'],
};
/** Tests of a package may also use the demo and the simulated peers. */
const TESTS_MAY_ALSO = ['testkit', 'demo'];

const SHARED_DOCUMENT = /^(yjs|y-[a-z-]+|lib0)(\/|$)/;
/** Where a library that shares documents may stand. Frames, good ones and rubbish, are written with lib0 alone. */
const MAY_SHARE: Readonly<Record<string, RegExp>> = {
  'packages/document': SHARED_DOCUMENT,
  'packages/protocol': /^lib0(\/|$)/,
  'packages/testkit': /^lib0(\/|$)/,
};

const list = (imports: readonly Import[]) => imports.map(({ at, of }) => `${at}: ${of}`);

test('every package and app is in the table', () => {
  expect(PACKAGES.map(({ home }) => home).filter((home) => !(home in MAY_IMPORT))).toEqual([]);
});

test('imports between packages point down', () => {
  const wrong = IMPORTS.filter(({ of, file }) => {
    const home = homeOf(file.path);
    const allowed = MAY_IMPORT[home];
    if (!of.startsWith('@loopwright/') || !allowed) return false;
    const name = of.slice('@loopwright/'.length);
    return !allowed.includes(name) && !(isTest(file.path) && TESTS_MAY_ALSO.includes(name));
  });
  expect(list(wrong)).toEqual([]);
});

test('a package is entered by its public entries only', () => {
  const entries = new Set(PACKAGES.flatMap((one) => [...one.entries.keys()]));
  expect(list(IMPORTS.filter(({ of }) => of.startsWith('@loopwright/') && !entries.has(of)))).toEqual([]);
});

// An app publishes nothing, so tests that span packages reach into it by path; a package has its entries.
test('a relative import stays at home', () => {
  const strays = IMPORTS.filter((found) => {
    const path = pathOf(found);
    const home = homeOf(found.file.path);
    if (path === undefined || homeOf(path) === home || path.endsWith('.mjs')) return false;
    return home !== 'tests' || path.startsWith('packages/');
  });
  expect(list(strays)).toEqual([]);
});

test('inside a package the file itself is imported, never a barrel', () => {
  const barrels = IMPORTS.filter((found) => {
    const path = pathOf(found);
    return found.file.path.startsWith('packages/') && path !== undefined && /(^|\/)index(\.ts)?$/.test(path);
  }).filter(({ file }) => !isTest(file.path) && !/\/src\/settings\/|^packages\/model\/src\//.test(file.path));
  expect(list(barrels)).toEqual([]);
});

test('only packages/document sees how plans are shared', () => {
  const seen = IMPORTS.filter(({ of, file }) => {
    if (!SHARED_DOCUMENT.test(of)) return false;
    return !MAY_SHARE[homeOf(file.path)]?.test(of) && homeOf(file.path) !== 'tests';
  });
  expect(list(seen)).toEqual([]);
});

test('the simulated peers are for tests', () => {
  const users = IMPORTS.filter(
    ({ of, file }) => of === '@loopwright/testkit' && !isTest(file.path) && homeOf(file.path) !== 'tests',
  );
  expect(list(users)).toEqual([]);
});

test('a package declares what it imports', () => {
  const ours = new Map(PACKAGES.map((one) => [one.home, one]));
  const undeclared = IMPORTS.filter(({ of, file }) => {
    const home = ours.get(homeOf(file.path));
    if (!home || of.startsWith('.') || isTest(file.path) || !file.path.includes('/src/')) return false;
    const name = of.startsWith('@') ? of.split('/').slice(0, 2).join('/') : (of.split('/')[0] ?? of);
    return !home.dependencies.has(name) && !of.startsWith('node:') && name !== 'vitest' && name !== home.name;
  });
  expect(list(undeclared)).toEqual([]);
});

test("Node's own modules stay in the server, the command line and scripts", () => {
  const node = new Set(builtinModules);
  const seen = IMPORTS.filter(({ of, file }) => {
    const isNode = of.startsWith('node:') || node.has(of);
    return isNode && !isTest(file.path) && /^(packages\/(?!testkit)|apps\/board\/src\/)/.test(file.path);
  });
  expect(list(seen)).toEqual([]);
});

test('the table is about files that are there', () => {
  expect(CODE.length).toBeGreaterThan(100);
  expect(filesMatching(/^packages\/model\/src\/index\.ts$/)).toHaveLength(1);
});
