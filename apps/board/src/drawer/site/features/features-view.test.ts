import { type Feature, presetOf } from '@loopwright/model';
import { expect, test } from 'vitest';
import { LAND } from '../../../tools/land/land.test-site.ts';
import { changedKind, featureGroups, middleOf, sizeWords } from './features-view.ts';

const [wood, pond, road] = LAND.features;
if (!wood || !pond || !road) throw new Error('the land has a wood, a pond and a road');

test('features are grouped by kind in the order kinds are offered', () => {
  expect(featureGroups(LAND.features, '', 'metres').map(({ kind, rows }) => [kind, rows.length])).toEqual([
    ['water', 1],
    ['trees', 1],
    ['public road', 1],
    ['landmark', 1],
  ]);
});

test('a filter finds words in the name, the kind, the authority and the note', () => {
  const named: Feature = { ...wood, name: 'Alder Carr', authority: 'River Board', note: 'owls nest here' };
  const found = (words: string) => featureGroups([named, pond], words, 'metres').flatMap(({ rows }) => rows);
  expect(found(' alder ').map(({ title }) => title)).toEqual(['Alder Carr']);
  expect(found('RIVER').map(({ id }) => id)).toEqual(['wood']);
  expect(found('owls')).toHaveLength(1);
  expect(found('water').map(({ id }) => id)).toEqual(['pond']);
  expect(found('nobody')).toEqual([]);
});

test('a size is what is not cut out: a pond of 100 m square with an island of 20 m square', () => {
  expect(sizeWords(pond.geometry, 'metres')).toBe('9,600 m²'); // 10,000 − 400
  expect(sizeWords(road.geometry, 'metres')).toBe('a line of 1,000 m');
  expect(middleOf(road.geometry)).toEqual({ x: 500, y: 700 });
});

test('of another kind it allows what that kind does, unless somebody said else before', () => {
  expect(changedKind(pond, 'protected')).toEqual({ kind: 'protected', allows: presetOf('protected').allows });
  const said = { ...pond, allows: { ...pond.allows, walk: true } };
  expect(changedKind(said, 'protected')).toEqual({ kind: 'protected' });
});

test('two thousand features are grouped well within a picture', () => {
  const many = Array.from({ length: 2000 }, (_, index) => ({ ...wood, id: `f${index}`, name: `wood ${index}` }));
  expect(featureGroups(many, 'wood 1999', 'metres')[0]?.rows).toHaveLength(1);
});
