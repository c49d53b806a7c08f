import type { Feature } from '@loopwright/model';
import { expect, test } from 'vitest';
import { LAND } from '../tools/land/land.test-site.ts';
import { addAll, countsOf, readingOf, stepAfter } from './features-step.ts';

const features: readonly Feature[] = LAND.features;

test('what is in a file is counted by kind', () => {
  expect(countsOf([...features, ...features.slice(0, 1)])).toEqual([
    { kind: 'water', count: 1 },
    { kind: 'trees', count: 2 },
    { kind: 'public road', count: 1 },
    { kind: 'landmark', count: 1 },
  ]);
});

test('all of a file is one step; the grid it brings goes with it', () => {
  expect(addAll({ kind: 'features', features, notes: [] })).toEqual({ edit: 'add features', features });
  const grid = { easting: 500_000, northing: 200_000 };
  expect(addAll({ kind: 'features', features, notes: [], grid })).toMatchObject({
    edit: 'several',
    does: 'add 4 features',
    edits: [{ edit: 'set grid', grid }, { edit: 'add features' }],
  });
});

test('numbers that may mean several things are asked about, the likeliest first', () => {
  const readings = ['survey grid', 'site plane'] as const;
  const step = stepAfter('site.geojson', { kind: 'which-coordinates', why: 'They are no degrees.', readings });
  expect(step).toEqual({ at: 'asking', file: 'site.geojson', why: 'They are no degrees.', readings });
  expect(readingOf('longitude and latitude', 'metres')).toEqual({ as: 'longitude and latitude' });
  expect(readingOf('survey grid', 'US survey feet')).toEqual({ as: 'survey grid', unit: 'US survey feet' });
});

test('a file that cannot be read changes nothing and says why', () => {
  expect(stepAfter('x.json', { kind: 'unreadable', why: 'It is cut off.' })).toEqual({
    at: 'unreadable',
    file: 'x.json',
    why: 'It is cut off.',
  });
});
