import { type Feature, presetOf, type Ring, type Site } from '@loopwright/model';
import { site } from '../one-hole.test-hand.ts';

export const square = (x: number, y: number, side: number): Ring => [
  { x, y },
  { x: x + side, y },
  { x: x + side, y: y + side },
  { x, y: y + side },
];

/** A pond with an island in a wood, a road, a landmark, a base with a footprint, and two marks on 1 km² of land. */
export const LAND: Site = {
  ...site,
  boundary: { outlines: [square(0, 0, 1000)], inner: [square(800, 800, 100)], tolerance: 0 },
  bases: [{ id: 'house', name: 'Clubhouse', apron: { x: 500, y: 500 }, footprints: [square(490, 520, 20)] }],
  marks: [
    { id: 'm1', kind: 'green site', at: { x: 700, y: 100 }, verdict: 'natural' },
    { id: 'm2', kind: 'tee site', at: { x: 720, y: 100 }, verdict: 'needs work' },
  ],
  features: [
    feature('wood', 'trees', { type: 'area', rings: [square(100, 100, 400)] }),
    feature('pond', 'water', { type: 'area', rings: [square(200, 200, 100), square(240, 240, 20)] }),
    feature('road', 'public road', {
      type: 'line',
      points: [
        { x: 0, y: 700 },
        { x: 1000, y: 700 },
      ],
    }),
    feature('oak', 'landmark', { type: 'point', at: { x: 600, y: 600 } }),
  ],
};

function feature(id: string, kind: Feature['kind'], geometry: Feature['geometry']): Feature {
  return { id, kind, geometry, ...presetOf(kind) };
}
