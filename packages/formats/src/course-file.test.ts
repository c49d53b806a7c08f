import { readFileSync } from 'node:fs';
import { polylineLength } from '@loopwright/geometry';
import { canonicalJson, type Hole, numberHoles } from '@loopwright/model';
import fc from 'fast-check';
import geodesic from 'geographiclib-geodesic';
import { describe, expect, test } from 'vitest';
import { writeBoardFile } from './board/board-file.ts';
import { readCourseFile, type TakenCourse } from './course-file.ts';
import { LARGEST_COURSE_FILE } from './json-text.ts';

const SAMPLES = new URL('../../../tests/samples/', import.meta.url);
const sample = (name: string) => readFileSync(new URL(name, SAMPLES), 'utf8');

function take(text: string, index = 0): TakenCourse {
  const file = readCourseFile(text);
  if (file.kind !== 'courses') throw new Error(`expected courses, got ${JSON.stringify(file)}`);
  return file.take(index);
}

const routingOf = ({ plan }: TakenCourse) => {
  const [routing] = plan.routings;
  if (!routing) throw new Error('an imported plan has a routing');
  return routing;
};

const notesAbout = ({ notes }: TakenCourse, about: string) =>
  notes.filter((note) => note.about === about).map(({ what }) => what);

const lengthOf = (hole: Hole) => {
  const { green, tees, turnPoints } = hole;
  if (!green || !tees.back) return Number.NaN;
  return polylineLength([tees.back, ...turnPoints.map(({ at }) => at), green.centre]);
};

/** Sum of the geodesics along the lines tagged as holes, by GeographicLib 2.2.0, in file order. */
function geodesicLengths(text: string): readonly number[] {
  const file = JSON.parse(text) as {
    features: { properties: Record<string, string>; geometry: { coordinates: [number, number][] } }[];
  };
  const lines = file.features.filter(({ properties }) => properties.golf === 'hole');
  return lines.map(({ geometry }) => {
    let sum = 0;
    for (const [i, [lon, lat]] of geometry.coordinates.entries()) {
      const before = geometry.coordinates[i - 1];
      if (before) sum += geodesic.Geodesic.WGS84.Inverse(before[1], before[0], lat, lon).s12 ?? 0;
    }
    return sum;
  });
}

describe('a clean course', () => {
  const taken = take(sample('clean.geojson'));
  const routing = routingOf(taken);

  test('has every hole at its number, with the par that is mapped', () => {
    expect(routing.loops.map(({ name, holes }) => [name, holes.length])).toEqual([
      ['Out', 9],
      ['In', 9],
    ]);
    const pars = routing.holes.map(({ par }) => par.men);
    expect(pars).toEqual([4, 5, 4, 3, 4, 4, 3, 5, 4, 4, 4, 3, 5, 4, 4, 3, 5, 4]);
    expect([...numberHoles(routing).values()]).toEqual(Array.from({ length: 18 }, (_, i) => i + 1));
  });

  test('has lengths that are the geodesics of the mapped lines within 1 in 100,000', () => {
    const truth = geodesicLengths(sample('clean.geojson'));
    for (const [i, hole] of routing.holes.entries()) {
      const length = truth[i] ?? Number.NaN;
      expect(Math.abs(lengthOf(hole) - length)).toBeLessThan(length * 1e-5 + 0.0015); // + rounding to the millimetre
    }
  });

  test('has greens of their mapped size, a base at its clubhouse, and its land', () => {
    // Drawn as ovals of 32 by 24 m with twelve corners: the smallest rectangle may lie a little across them.
    for (const { green } of routing.holes) {
      expect(Math.abs((green?.length ?? 0) - 32)).toBeLessThan(1);
      expect(Math.abs((green?.width ?? 0) - 24)).toBeLessThan(1);
    }
    const { site } = taken.plan;
    expect(site.bases).toHaveLength(1);
    expect(site.boundary).toMatchObject({ tolerance: 10, outlines: [expect.anything()] });
    const kinds = new Set(site.features.map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual([
      'building',
      'bunker',
      'course path',
      'fairway',
      'other',
      'public path',
      'public road',
      'range',
      'trees',
      'water',
    ]);
  });

  test('needs no mending, so that notes only tell where it was placed and what to know', () => {
    expect(taken.notes.filter(({ about }) => about?.startsWith('Hole'))).toEqual([]);
  });
});

describe('a course with the faults real maps have', () => {
  const taken = take(sample('dirty.geojson'));
  const routing = routingOf(taken);
  const holes = routing.loops.flatMap((loop) =>
    loop.holes.flatMap((id) => routing.holes.filter((hole) => hole.id === id)),
  );
  const truth = lengthsByNumber();

  function lengthsByNumber() {
    const pars = [4, 5, 4, 3, 4, 4, 3, 5, 4, 4, 4, 3, 5, 4, 4, 3, 5, 4];
    return pars.map((par) => ({ 3: 155, 4: 365, 5: 491 })[par]);
  }

  test('still has its eighteen holes in order, the strays in the tray', () => {
    expect(holes).toHaveLength(18);
    expect(routing.spare).toHaveLength(2);
    for (const [i, hole] of holes.entries()) {
      if (i === 4 || i === 12) continue; // led to its green; drawn as an arc
      expect(Math.abs(lengthOf(hole) - (truth[i] ?? 0))).toBeLessThan(2); // the sample's metres are good to 0.3 %
    }
  });

  test.each([
    ['Hole 2', /No par is mapped/],
    ['Hole 3', /No tee is mapped/],
    ['Hole 4', /turned round/],
    ['Hole 5', /24 m off its green/],
    ['Hole 6', /No green of its own.*28 by 25 m was assumed/],
    ['Hole 7', /from its name/],
    ['Hole 8', /another hole's too.*taken as hole 9/],
    ['Hole 11', /2 pieces/],
    ['Hole 13', /turns at 7 points: the 3 that matter/],
    ['Hole 14', /twice/],
    ['Hole 15A', /alternate.*spare tray/],
    ['Hole 18', /'4\/5'/],
    ['A hole without a number', /kilometres from the other holes/],
    ['A hole without a number', /taken as hole 17/],
    ['Boundary', /2 pieces/],
    ['Range', /which way the range is played/],
  ])('%s: %s is told', (about, what) => {
    expect(notesAbout(taken, about)).toContainEqual(expect.stringMatching(what));
  });

  test.each([
    /Heights left out/,
    /Closed, since/,
    /no GeoJSON: 1/,
    /usable geometry: 1/,
    /finite numbers: 1/,
    /tags of no use/,
  ])('what concerns the whole file is told: %s', (what) =>
    expect(taken.notes.map((note) => note.what)).toContainEqual(expect.stringMatching(what)),
  );

  test('a script in a name stays plain text, without its control character', () => {
    expect(holes[0]?.name).toBe('<script>alert(1)</script>');
  });

  test('the line that was drawn as an arc keeps its length', () => {
    const arc = Array.from({ length: 9 }, (_, i) => ({ x: 60 * Math.sin((i * Math.PI) / 8), y: (490 * i) / 8 }));
    expect(Math.abs(lengthOf(holes[12] as Hole) - polylineLength(arc))).toBeLessThan(2);
  });
});

test.each(['swapped-by-range.geojson', 'swapped-by-pars.geojson'])('%s is turned round, with a note', (name) => {
  const taken = take(sample(name));
  expect(taken.notes.map(({ what }) => what)).toContainEqual(expect.stringMatching(/latitude first/));
  const total = routingOf(taken).holes.reduce((sum, hole) => sum + lengthOf(hole), 0);
  expect(Math.abs(total - (10 * 365 + 4 * 155 + 4 * 490.8))).toBeLessThan(25);
});

test('two courses in one file are offered by name, and each is taken by itself', () => {
  const file = readCourseFile(sample('two-courses.geojson'));
  expect(file).toMatchObject({
    courses: [
      { name: 'Made-up New', holes: 18 },
      { name: 'Made-up Old', holes: 9 },
    ],
  });
  expect(routingOf(take(sample('two-courses.geojson'), 1)).loops.map(({ holes }) => holes.length)).toEqual([9]);
  expect(() => take(sample('two-courses.geojson'), 2)).toThrow(RangeError);
});

test('three nines by colour make three loops and the three rounds of two', () => {
  const { loops, rounds } = routingOf(take(sample('three-nines.geojson')));
  expect(loops.map(({ name, holes }) => [name, holes.length])).toEqual([
    ['Blue', 9],
    ['Red', 9],
    ['White', 9],
  ]);
  expect(rounds.map(({ name }) => name)).toEqual(['Blue + Red', 'Red + White', 'White + Blue']);
});

test('a bare list of features and a single feature are read all the same', () => {
  expect(routingOf(take(sample('bare-list.json'))).holes).toHaveLength(18);
  expect(routingOf(take(sample('one-feature.json'))).holes).toHaveLength(1);
});

test.each([
  ['', /empty/],
  ['  \n', /empty/],
  ['<html></html>', /XML or a web page/],
  ['tee,green\n1,2', /not JSON/],
  ['{"a":1,}', /not valid JSON/],
  ['{"type":"FeatureCollection"}', /neither a board file nor GeoJSON/],
  ['{"type":"FeatureCollection","features":[]}', /No holes were found/],
  ['{"loopwright":9,"routings":[]}', /version 9/],
  ['[1e308]', /No holes/],
  ['7', /not JSON/],
  ['['.repeat(100_000), /cut off|not valid/],
])('%j is answered in one sentence', (text, why) => {
  expect(readCourseFile(text)).toMatchObject({ kind: 'unreadable', why: expect.stringMatching(why) });
});

test.each([
  ['truncated.geojson', /cut off/],
  ['polar.geojson', /pole/],
  ['across-the-date-line.geojson', /180° meridian/],
  ['metres.geojson', /not longitude and latitude/],
])('%s is refused in one sentence', (name, why) => {
  expect(readCourseFile(sample(name))).toMatchObject({ kind: 'unreadable', why: expect.stringMatching(why) });
});

test('a file over the limit is answered without being read', () => {
  const text = ' '.repeat(LARGEST_COURSE_FILE + 1);
  expect(readCourseFile(text)).toMatchObject({ why: expect.stringMatching(/50 MB is the most/) });
});

test('10,000 holes are refused in one sentence', () => {
  const hole = (i: number) => ({
    type: 'Feature',
    properties: { golf: 'hole', ref: String(i) },
    geometry: {
      type: 'LineString',
      coordinates: [
        [i / 1e5, 50],
        [i / 1e5, 50.003],
      ],
    },
  });
  const text = JSON.stringify({
    type: 'FeatureCollection',
    features: Array.from({ length: 10_000 }, (_, i) => hole(i)),
  });
  expect(readCourseFile(text)).toMatchObject({ why: expect.stringMatching(/10000 holes.*at most 200/) });
});

test.each(['clean', 'dirty', 'three-nines'])('%s: a board file of it reads back equal, without a note', (name) => {
  const { plan } = take(sample(`${name}.geojson`));
  const again = readCourseFile(writeBoardFile(plan));
  expect(again).toMatchObject({ kind: 'board', notes: [] });
  if (again.kind !== 'board') return;
  expect(again.plan).toEqual(plan);
  expect(writeBoardFile(again.plan)).toBe(writeBoardFile(plan));
});

test('a name longer than a board takes is cut between characters, never through one', () => {
  const feature = JSON.parse(sample('one-feature.json'));
  feature.properties.name = `${'⛳'.repeat(40)} ${'😀'.repeat(60)}`;
  const { plan } = take(JSON.stringify(feature));
  expect([...(plan.routings[0]?.holes[0]?.name ?? '')]).toHaveLength(80);
  expect(readCourseFile(writeBoardFile(plan))).toMatchObject({ kind: 'board', notes: [], plan });
});

test('nines that do not come back to the clubhouse have no base, so that no walk there is counted', () => {
  const { plan, notes } = take(sample('clean.geojson'));
  expect(plan.site.bases).toHaveLength(1);
  expect(plan.routings[0]?.loops.map((loop) => loop.base)).toEqual([undefined, undefined]);
  expect(notes.filter(({ about }) => about === 'Clubhouse')).toHaveLength(2);
});

test('whatever is knocked out of a file, it is read, or refused in a sentence, and reads back equal', () => {
  const clean: unknown = JSON.parse(sample('dirty.geojson'));
  const rubbish = fc.oneof(fc.constantFrom(null, 1e308, '', [], {}, [[]], -1), fc.jsonValue());
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.nat(), rubbish), { minLength: 1, maxLength: 12 }), (hits) => {
      let place = 0;
      const wanted = new Map(hits.map(([at, value]) => [at % 4000, value]));
      const hit = JSON.parse(JSON.stringify(clean), (_, value: unknown) => {
        place += 1;
        return wanted.has(place) ? wanted.get(place) : value;
      });
      const file = readCourseFile(JSON.stringify(hit));
      if (file.kind !== 'courses') return;
      for (const [index] of file.courses.entries()) {
        const { plan } = file.take(index);
        const again = readCourseFile(writeBoardFile(plan));
        expect(again).toMatchObject({ kind: 'board', notes: [] });
        if (again.kind === 'board') expect(canonicalJson(again.plan)).toBe(canonicalJson(plan));
      }
    }),
    { numRuns: 60 },
  );
});
