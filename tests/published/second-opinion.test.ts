// A second opinion from turf on lon/lat, and what our own import makes of lines of known length.
// turf measures on a sphere of radius 6,371,008.8 m (its stated mean radius): against the ellipsoid it may be off by up
// to the flattening, some 0.34 % north–south and 0.56 % at worst; 0.6 % is the tolerance. It would catch a swapped axis,
// a wrong unit or a lost scale factor, which is what it is for.

import { lonLatOf, readCourseFile } from '@loopwright/formats';
import { distanceBetween, polylineLength } from '@loopwright/geometry';
import { area, bearing, destination, distance, length, lineString, point, polygon } from '@turf/turf';
import geodesic from 'geographiclib-geodesic';
import { expect, test } from 'vitest';

const { WGS84 } = geodesic.Geodesic;
const SPHERE_WITHIN = 0.006;

interface Line {
  readonly from: readonly [longitude: number, latitude: number];
  readonly to: readonly [longitude: number, latitude: number];
}

const HOLES: readonly (Line & { readonly name: string })[] = [
  { name: 'along a parallel at 56° N', from: [-2.82, 56.35], to: [-2.81, 56.35] },
  { name: 'north-east at 37° N', from: [-121.9487, 36.5674], to: [-121.945, 36.57] },
  { name: 'at the equator', from: [0, 0], to: [0.001, 0.001] },
  { name: 'south of the equator', from: [145.02, -37.97], to: [145.022, -37.973] },
  { name: 'along a meridian at 64° N', from: [-21.9, 64.12], to: [-21.9, 64.124] },
];

const geodesicOf = ({ from, to }: Line) => WGS84.Inverse(from[1], from[0], to[1], to[0]);

test.each(HOLES)('turf agrees on length and bearing $name', (line) => {
  const { s12 = Number.NaN, azi1 = Number.NaN } = geodesicOf(line);
  const metres = distance(point([...line.from]), point([...line.to]), { units: 'meters' });
  expect(Math.abs(metres / s12 - 1)).toBeLessThan(SPHERE_WITHIN);
  expect(length(lineString([[...line.from], [...line.to]]), { units: 'meters' })).toBeCloseTo(metres, 6);
  const turned = Math.abs(bearing(point([...line.from]), point([...line.to])) - azi1) % 360;
  // The same 0.6 % across the line is 0.34°.
  expect(Math.min(turned, 360 - turned)).toBeLessThan(0.35);
  const end = destination(point([...line.from]), s12, azi1, { units: 'meters' });
  const [longitude = Number.NaN, latitude = Number.NaN] = end.geometry.coordinates;
  expect(WGS84.Inverse(latitude, longitude, line.to[1], line.to[0]).s12).toBeLessThan(s12 * SPHERE_WITHIN * 1.5);
});

test('turf agrees on the area of a small outline at the equator', () => {
  const outline = [
    [0, 0],
    [0.01, 0],
    [0.01, 0.01],
    [0, 0.01],
    [0, 0],
  ];
  // Computed with geographiclib-geodesic 2.2.0; twice the tolerance of a length.
  expect(Math.abs(area(polygon([outline])) / 1_230_907.205 - 1)).toBeLessThan(2 * SPHERE_WITHIN);
});

/** A course of one straight hole, as the open map tags have it. */
function importedHole({ from, to }: Line) {
  const geojson = {
    type: 'FeatureCollection',
    features: [
      {
        type: 'Feature',
        properties: { golf: 'hole', ref: '1', par: '4' },
        geometry: { type: 'LineString', coordinates: [from, to] },
      },
    ],
  };
  const file = readCourseFile(JSON.stringify(geojson));
  if (file.kind !== 'courses') throw new Error(`read as ${file.kind}`);
  const { plan } = file.take(0);
  const hole = plan.routings[0]?.holes[0];
  const [tee] = Object.values(hole?.tees ?? {});
  if (!hole?.green || !tee || !plan.site.location) throw new Error('the hole is incomplete or the site has no place');
  return { tee, green: hole.green.centre, location: plan.site.location };
}

// The importer's promise: within 1 in 100,000 of the geodesic, and both ends rounded to the millimetre.
test.each(HOLES)('an imported hole is as long as the ground $name', (line) => {
  const { tee, green } = importedHole(line);
  const { s12 = Number.NaN } = geodesicOf(line);
  expect(Math.abs(polylineLength([tee, green]) - s12)).toBeLessThan(s12 * 1e-5 + 0.0015);
});

test.each(HOLES)('an imported hole goes back to where it came from $name', (line) => {
  const { tee, green, location } = importedHole(line);
  const toLonLat = lonLatOf(location);
  for (const [site, [longitude, latitude]] of [
    [tee, line.from],
    [green, line.to],
  ] as const) {
    const back = toLonLat?.(site);
    expect(WGS84.Inverse(back?.lat ?? Number.NaN, back?.lon ?? Number.NaN, latitude, longitude).s12).toBeLessThan(
      0.0015,
    );
  }
  expect(distanceBetween(tee, green)).toBeGreaterThan(100);
});
