// Cone geometry and the tapered corridor of a published ordinance, and the R&A's worked example of a queue.
import { queueWaits, tangent } from '@loopwright/analysis';
import { METRES_PER_FOOT, METRES_PER_YARD, SETTINGS } from '@loopwright/model';
import { expect, test } from 'vitest';

// Half-width = distance × tan angle. Exact trigonometry; tables printed to 0.01 yd and 0.1 ft.
// Forum figures such as '15° is 150 ft at 200 yd' are rounded (14.04°) and are not tested against.
const CONES = [
  { yards: 190, wideYards: 50.91, wideFeet: 152.7, narrowFeet: 75.0 },
  { yards: 200, wideYards: 53.59, wideFeet: 160.8, narrowFeet: 79.0 },
  { yards: 250, wideYards: 66.99, wideFeet: 201.0, narrowFeet: 98.7 },
  { yards: 265, wideYards: 71.01, wideFeet: 213.0, narrowFeet: 104.7 },
];

test.each(CONES)(
  'at $yards yd a cone of 15° is $wideYards yd to each side',
  ({ yards, wideYards, wideFeet, narrowFeet }) => {
    expect(Math.abs(yards * tangent(15) - wideYards)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(yards * 3 * tangent(15) - wideFeet)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(yards * 3 * tangent(7.5) - narrowFeet)).toBeLessThanOrEqual(0.05);
  },
);

test('150 ft at 200 yd is 14.04°, at 190 yd 14.74°', () => {
  expect(Math.abs(tangent(14.04) - 150 / 600)).toBeLessThanOrEqual(1e-4);
  expect(Math.abs(tangent(14.74) - 150 / 570)).toBeLessThanOrEqual(1e-4);
});

test('the shot fan stands at the angle that Hurdzan is quoted with, 15° (J. Brauer, 2009)', () => {
  expect(SETTINGS['fan-outer-angle'].default).toBe(15);
  expect(SETTINGS['public-angle'].default).toBe(15);
});

// North Braddock Borough, Pennsylvania, code §155.156: centreline to adjoining property line.
test.each([
  ['public-tee-stop', 75],
  ['public-landing-stop', 150],
  ['public-green-stop', 100],
] as const)("%s is the ordinance's %i ft", (key, feet) => {
  expect(SETTINGS[key].default).toBeCloseTo(feet * METRES_PER_FOOT, 6);
});

// C. Johnston, Routing considerations: 165 yd, 500 yd.
test.each([
  ['long-par-three-mention', 165],
  ['reachable-par-five-mention', 500],
] as const)('%s is %i yd', (key, yards) => {
  expect(SETTINGS[key].default).toBeCloseTo(yards * METRES_PER_YARD, 6);
});

// R&A Pace of Play Manual (2016), section 2.2: holes of 12, 12 and 9 min, groups of three 8 min apart. Group 2 waits
// 1 min on the third tee, group 3 longer; at 10 min nobody waits. The par 3 holds one group at a time.
test.each([
  [8, 1, 0],
  [8, 2, 1],
  [8, 3, 2],
  [8, 10, 9],
  [10, 2, 0],
  [10, 10, 0],
])('groups %i min apart: group %i waits %i min on the third tee', (interval, group, wait) => {
  expect(queueWaits([{ hole: 3, time: 9 }], interval, group)).toEqual([{ hole: 3, time: 9, wait }]);
});

test('behind one queue there is no second for a hole that is no slower', () => {
  const waits = queueWaits(
    [
      { hole: 3, time: 9 },
      { hole: 5, time: 9 },
      { hole: 7, time: 11 },
    ],
    8,
    4,
  );
  expect(waits.map(({ wait }) => wait)).toEqual([3, 0, 6]);
});
