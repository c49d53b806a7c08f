import { boundsOf } from '@loopwright/geometry';
import type { Boundary, Feature, FeatureGeometry, Ring } from '@loopwright/model';
import { expect, test } from 'vitest';
import type { SnapWishes } from '../instrument.ts';
import { boundaryGuides, featureGuides } from './outline-guides.ts';
import { pulled } from './pulled.ts';

const at = (x: number, y: number) => ({ x, y });
const square: Ring = [at(0, 0), at(100, 0), at(100, 100), at(0, 100)];
const pointsOf = (geometry: FeatureGeometry) =>
  geometry.type === 'point' ? [geometry.at] : geometry.type === 'line' ? geometry.points : geometry.rings.flat();

const pond = (geometry: FeatureGeometry, buffer = 20): Feature => ({
  id: 'f1',
  kind: 'water',
  geometry,
  allows: { carry: true, walk: false, mow: false, build: false },
  buffer,
});

function pull(point: { x: number; y: number }, feature: Feature, wishes: SnapWishes) {
  const parts = {
    at: point,
    reach: 10,
    boxOf: (geometry: FeatureGeometry) => boundsOf(pointsOf(geometry)),
    length: (metres: number) => `${metres} m`,
    nameOf: () => 'the pond',
  };
  return pulled(point, featureGuides([feature], wishes, parts), 10);
}

test('a green keeps the buffer of a pond, outside it', () => {
  const area = pond({ type: 'area', rings: [square] });
  expect(pull(at(126, 50), area, { for: 'green' })).toMatchObject({ at: at(120, 50), because: '20 m from the pond' });
  // From a corner it is the distance to the corner: 12, 16, 20.
  expect(pull(at(113.2, 117.6), area, { for: 'green' }).at).toEqual(at(112, 116));
  expect(pull(at(80, 50), area, { for: 'green' }).because).toBeUndefined();
  expect(pull(at(500, 50), area, { for: 'green' }).because).toBeUndefined();
});

test('a line and a point keep their buffer all around', () => {
  const line = pond({ type: 'line', points: [at(0, 0), at(100, 0)] });
  expect(pull(at(50, -16), line, { for: 'tee' }).at).toEqual(at(50, -20));
  const well = pond({ type: 'point', at: at(0, 0) });
  expect(pull(at(0, 24), well, { for: 'tee' }).at).toEqual(at(0, 20));
});

test('a vertex is pulled to corners and edges, but not to those of its own feature', () => {
  const area = pond({ type: 'area', rings: [square] });
  expect(pull(at(103, 97), area, { for: 'vertex' })).toMatchObject({
    at: at(100, 100),
    because: 'a corner of the pond',
  });
  expect(pull(at(104, 50), area, { for: 'vertex' })).toMatchObject({
    at: at(100, 50),
    because: 'on the line of the pond',
  });
  expect(pull(at(104, 50), area, { for: 'vertex', without: 'f1' }).because).toBeUndefined();
});

test('within the boundary the inset pulls, outside nothing does', () => {
  const boundary: Boundary = { outlines: [square], inner: [], tolerance: 0 };
  const guides = boundaryGuides(boundary, { for: 'green' }, 30, { length: (metres) => `${metres} m` });
  expect(pulled(at(66, 50), guides, 10)).toMatchObject({ at: at(70, 50), because: '30 m inside the boundary' });
  expect(pulled(at(130, 50), guides, 10).because).toBeUndefined();
  expect(boundaryGuides(undefined, { for: 'green' }, 30, { length: String })).toEqual([]);
});
