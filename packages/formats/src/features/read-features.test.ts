import { type Feature, LIMITS, parseFeature, presetOf, type Site, type SiteLocation } from '@loopwright/model';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type FeaturesOptions, readFeatures } from './read-features.ts';

/** On the equator and the middle meridian of UTM zone 31, where the grid's scale is 0.9996 by definition. */
const LOCATION: SiteLocation = {
  ...{ latitude: 0, longitude: 3, epsg: 32631, scaleFactor: 0.9996 },
  origin: { easting: 500_000, northing: 0 },
};
const bare: Site = { name: 'Made-up Moor', north: 0, bases: [], marks: [], features: [], images: [] };
const onEarth: Site = { ...bare, location: LOCATION };

const collection = (...features: readonly unknown[]) => ({ type: 'FeatureCollection', features });
const thing = (geometry: object, properties: object = {}) => ({ type: 'Feature', geometry, properties });
const line = (...coordinates: readonly number[][]) => ({ type: 'LineString', coordinates });
const point = (x: number, y: number) => ({ type: 'Point', coordinates: [x, y] });
const square = (x: number, y: number, side: number) => [
  ...[
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
    [x, y],
  ],
];

function read(value: unknown, site: Site = bare, coordinates?: FeaturesOptions['coordinates']) {
  let count = 0;
  const freshId = (letter: string) => `${letter}${++count}`;
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return readFeatures(text, site, { freshId, ...(coordinates && { coordinates }) });
}
const METRES = { as: 'site plane', unit: 'metres' } as const;
function features(...all: Parameters<typeof read>): { features: readonly Feature[]; notes: readonly string[] } {
  const file = read(...all);
  if (file.kind !== 'features') throw new Error(file.why);
  return { features: file.features, notes: file.notes.map(({ what }) => what) };
}
const kinds = (...all: readonly object[]) =>
  features(collection(...all.map((properties) => thing(point(1, 2), properties))), bare, METRES).features.map(
    ({ kind }) => kind,
  );

test('longitude and latitude are placed where the board says it lies, as lengths on the ground', () => {
  const { features: placed } = features(collection(thing(line([3, 0], [3, 0.001], [3.001, 0.001]))), onEarth);
  const geometry = placed[0]?.geometry;
  const points = geometry?.type === 'line' ? geometry.points : [];
  // At the equator of WGS 84 a degree of latitude is 110.574 km and one of longitude 111.320 km (NGA.STND.0036).
  expect(points[0]).toEqual({ x: 0, y: 0 });
  expect(points[1]?.y).toBeCloseTo(110.574, 2);
  expect((points[2]?.x ?? 0) - (points[1]?.x ?? 0)).toBeCloseTo(111.32, 2);
});

test('positions written latitude first are turned round where only that lies at the site, and it is said', () => {
  const { features: placed, notes } = features(collection(thing(point(0.001, 3))), onEarth);
  expect(placed[0]?.geometry).toMatchObject({ type: 'point', at: { x: 0 } });
  expect(notes.join()).toMatch(/latitude first/);
});

test.each([
  [
    'longitudes and latitudes far from the site',
    collection(thing(point(10, 50))),
    onEarth,
    ['site plane', 'survey grid', 'longitude and latitude'],
  ],
  ['small numbers on a board without a place', collection(thing(point(10, 50))), bare, ['site plane', 'survey grid']],
  ['numbers of a survey grid', collection(thing(point(412_345, 98_765))), bare, ['survey grid', 'site plane']],
  [
    'a system the board does not know',
    { ...collection(thing(point(1, 2))), crs: { type: 'name', properties: { name: 'urn:ogc:def:crs:EPSG::27700' } } },
    bare,
    ['site plane', 'survey grid'],
  ],
])('%s: how they are meant is asked, never guessed', (_, value, site, readings) => {
  expect(read(value, site)).toMatchObject({
    kind: 'which-coordinates',
    readings,
    why: expect.stringMatching(/: choose/),
  });
});

test('a file that names the grid of the board is placed in it', () => {
  const crs = { type: 'name', properties: { name: 'EPSG:32631' } };
  const { features: placed, notes } = features({ ...collection(thing(point(500_999.6, 99.96))), crs }, onEarth);
  expect(placed[0]?.geometry).toEqual({ type: 'point', at: { x: 1000, y: 100 } }); // 999.6 ÷ 0.9996 by hand
  expect(notes.join()).toMatch(/EPSG:32631/);
});

test('a file that says it is in longitude and latitude cannot be placed on a board without a place', () => {
  const crs = { type: 'name', properties: { name: 'urn:ogc:def:crs:OGC:1.3:CRS84' } };
  expect(read({ ...collection(thing(point(3, 0))), crs })).toMatchObject({
    kind: 'unreadable',
    why: expect.stringMatching(/does not say where on Earth/),
  });
});

test('metres on the plane, and feet, are taken as was said; a note keeps that', () => {
  const file = collection(thing(point(1000, 500)));
  expect(features(file, bare, METRES).features[0]?.geometry).toEqual({ type: 'point', at: { x: 1000, y: 500 } });
  const feet = features(file, bare, { as: 'site plane', unit: 'international feet' });
  expect(feet.features[0]?.geometry).toEqual({ type: 'point', at: { x: 304.8, y: 152.4 } });
  expect(feet.notes.join()).toMatch(/Taken as international feet from the origin of the site plane, as was said/);
});

test('the survey grid of the board is taken off; a board without one gets the file’s', () => {
  const file = collection(thing(line([412_000, 98_000], [412_400, 98_200])));
  const onGrid = { ...bare, grid: { easting: 412_000, northing: 98_000 } };
  const inGrid = { as: 'survey grid', unit: 'metres' } as const;
  const there = read(file, onGrid, inGrid);
  expect(there).toMatchObject({
    features: [
      {
        geometry: {
          points: [
            { x: 0, y: 0 },
            { x: 400, y: 200 },
          ],
        },
      },
    ],
  });
  expect(there).not.toHaveProperty('grid');
  const brought = read(file, bare, inGrid);
  expect(brought).toMatchObject({
    grid: { easting: 412_200, northing: 98_100 },
    features: [
      {
        geometry: {
          points: [
            { x: -200, y: -100 },
            { x: 200, y: 100 },
          ],
        },
      },
    ],
  });
});

test('what a thing is comes from the file’s own word, then its map tags, then its name; else it is other, and said', () => {
  expect(
    kinds(
      { kind: 'Easement', natural: 'water' },
      { highway: 'footway' },
      { layer: 'Flood line 1:100' },
      { name: 'Mill pond' },
      { Name: 'Lower Wood' },
      { name: 'Old road' },
      { golf: 'green' },
      { name: 'x' },
    ),
  ).toEqual(['easement', 'public path', 'flood line', 'water', 'trees', 'public road', 'other', 'other']);
  const { notes } = features(collection(thing(point(1, 2), { name: 'Mill pond' }), thing(point(3, 4))), bare, METRES);
  expect(notes.join(' ')).toMatch(/guessed from their names: 1 feature/);
  expect(notes.join(' ')).toMatch(/1 feature came in as 'other', which forbids nothing/);
});

test('kinds bring what they allow; buffer, height, authority and note are kept where the file says them', () => {
  const said = { kind: 'protected', buffer: 30, authority: 'the county', note: 'orchids', height: '4.5', name: 'Fen' };
  const [fen] = features(collection(thing(point(1, 2), said)), bare, METRES).features;
  expect(fen).toEqual({
    ...{ id: 'f1', kind: 'protected', name: 'Fen', geometry: { type: 'point', at: { x: 1, y: 2 } } },
    ...presetOf('protected'),
    ...{ buffer: 30, authority: 'the county', note: 'orchids', height: 4.5 },
  });
});

test('areas keep what is cut out of them; parts of one become features of their own', () => {
  const donut = { type: 'Polygon', coordinates: [square(0, 0, 90), square(30, 30, 20)] };
  const two = { type: 'MultiPolygon', coordinates: [[square(0, 0, 9)], [square(100, 0, 9)]] };
  const trees = {
    type: 'MultiPoint',
    coordinates: [
      [1, 1],
      [2, 2],
      [3, 3],
    ],
  };
  const both = { type: 'GeometryCollection', geometries: [point(5, 5), line([0, 0], [9, 9])] };
  const read = features(collection(thing(donut), thing(two), thing(trees), thing(both)), bare, METRES).features;
  expect(read.map(({ geometry }) => geometry.type)).toEqual([
    ...['area', 'area', 'area', 'point', 'point', 'point', 'point', 'line'],
  ]);
  const [first] = read;
  expect(first?.geometry.type === 'area' && first.geometry.rings.map((ring) => ring.length)).toEqual([4, 4]);
});

test('more than five hundred points are thinned, and how far off that may be is said', () => {
  const wave = Array.from({ length: 4000 }, (_, x) => [x, 40 * Math.sin(x / 60)]);
  const { features: read, notes } = features(
    collection(thing({ type: 'LineString', coordinates: wave })),
    bare,
    METRES,
  );
  const geometry = read[0]?.geometry;
  expect(geometry?.type === 'line' && geometry.points.length <= LIMITS.linePoints).toBe(true);
  expect(notes.join()).toMatch(/drawn with fewer, at most \d/);
});

test('more features than the board takes are left out with a note, and those that come in fit in one step', () => {
  const many = collection(...Array.from({ length: 2100 }, (_, x) => thing(point(x, 1), { kind: 'trees' })));
  const full = { ...bare, features: features(many, bare, METRES).features.slice(0, 1990) };
  const { features: read, notes } = features(many, full, METRES);
  expect(read).toHaveLength(10);
  expect(notes.join()).toMatch(/Left out, since the board takes 2000/);
  const ring = Array.from({ length: 490 }, (_, i) => [900 * Math.cos(i / 78), 900 * Math.sin(i / 78)]);
  const large = collection(...Array.from({ length: 150 }, () => thing({ type: 'Polygon', coordinates: [ring] })));
  const points = features(large, bare, METRES).features.reduce(
    (sum, { geometry }) => sum + (geometry.type === 'area' ? geometry.rings.flat().length : 0),
    0,
  );
  expect(points).toBeLessThanOrEqual(LIMITS.featurePointsAtOnce);
});

test('holes are left for a whole course, and what lies a thousand kilometres off is left out', () => {
  const file = collection(
    thing(line([0, 0], [300, 0]), { golf: 'hole' }),
    thing(point(2e6, 0), { kind: 'trees' }),
    thing(point(3, 3), { kind: 'trees' }),
  );
  const { features: read, notes } = features(file, bare, METRES);
  expect(read).toHaveLength(1);
  expect(notes.join(' ')).toMatch(/Left out: 1 hole\. Holes come in with a whole course/);
  expect(notes.join(' ')).toMatch(/more than 1000 km from the site: 1 position/);
});

test.each([
  ['nothing', '', /empty/],
  ['a picture', '\u0089PNG', /not JSON: drop a GeoJSON file of what lies on the land/],
  ['a web page', '<html>', /XML or a web page/],
  ['a file that was cut off', '{"type":"FeatureCollection","features":[{"type":"Fea', /ends in the middle/],
  ['some other JSON', '{"answer":42}', /neither a board file nor GeoJSON/],
  ['a board of ours', '{"loopwright":1}', /a whole board/],
  ['a collection of nothing', '{"type":"FeatureCollection","features":[]}', /Nothing in this file can be drawn/],
  [
    'geometry of nothing',
    JSON.stringify(collection(thing({ type: 'Polygon', coordinates: [] }))),
    /Nothing in this file/,
  ],
  ['numbers that are none', '{"type":"Point","coordinates":["a","b"]}', /Nothing in this file/],
  ['a huge file', 'x'.repeat(50_000_001), /50 MB is the most/],
])('%s: one sentence with what to do', (_, text, why) => {
  expect(read(text)).toMatchObject({ kind: 'unreadable', why: expect.stringMatching(why) });
});

test('an area of no extent is left out, and a file of nothing else is said to be so', () => {
  const flat = thing(
    {
      type: 'Polygon',
      coordinates: [
        [
          [0, 0],
          [9, 0],
          [4, 0],
          [0, 0],
        ],
      ],
    },
    { kind: 'water' },
  );
  expect(read(collection(flat), bare, METRES)).toMatchObject({
    kind: 'unreadable',
    why: expect.stringMatching(/want of extent/),
  });
});

test('no value makes it throw, and every feature it gives is one the board can read', () => {
  const coordinates = fc.oneof(
    fc.jsonValue(),
    fc.constant([
      [
        [0, 0],
        [9, 0],
        [9, 9],
      ],
    ]),
    fc.constant([1e308, -1e308]),
  );
  const geometry = fc.record({
    type: fc.constantFrom('Point', 'LineString', 'Polygon', 'MultiPolygon', 'MultiPoint', 'x'),
    coordinates,
  });
  const member = fc.record({ type: fc.constant('Feature'), geometry, properties: fc.jsonValue() });
  fc.assert(
    fc.property(fc.array(member, { maxLength: 5 }), fc.constantFrom(bare, onEarth), (members, site) => {
      const file = read(collection(...members), site, METRES);
      if (file.kind === 'features') for (const feature of file.features) expect(parseFeature(feature)).toEqual(feature);
      else expect(file.kind === 'unreadable' && file.why).toMatch(/\.$/);
    }),
    { numRuns: 300 },
  );
});
