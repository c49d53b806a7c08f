import { distanceBetween } from '@loopwright/geometry';
import { METRES_PER_YARD, type SitePoint, settingsOf, type TeeSet } from '@loopwright/model';
import { describe, expect, test } from 'vitest';
import { plainHole } from '../incremental/plain-plan.ts';
import { holeFigures } from './hole-figures.ts';
import { sectorOf } from './rose.ts';

const at = (x: number, y: number): SitePoint => ({ x, y });
const SETTINGS = settingsOf({});
const TEES: readonly TeeSet[] = [
  { id: 'back', name: 'Back', player: 'scratch man' },
  { id: 'middle', name: 'Middle', player: 'bogey man' },
  { id: 'forward', name: 'Forward', player: 'bogey woman' },
];
const figures = (points: readonly SitePoint[], teeSets = TEES) =>
  holeFigures(plainHole('h', points), teeSets, SETTINGS);

describe('a proposed tee', () => {
  test("lets its player's drive reach the landing ground of the back tee's", () => {
    const hole = figures([at(0, 0), at(0, 400)]);
    const landing = hole.tees[0]?.landingAreas[0];
    if (!landing) throw new Error('a par 4 has a landing area');
    for (const { at: tee, player, proposed } of hole.tees.slice(1)) {
      const drive = player === 'bogey man' ? 200 : 150;
      expect(proposed).toBe(true);
      // Yards kept as metres to the millimetre; the tee too.
      expect(Math.abs(distanceBetween(tee, landing) - drive * METRES_PER_YARD)).toBeLessThan(0.01);
    }
  });

  test('stands outside the dogleg, clear of the line from the back tee', () => {
    const toTheLeft = figures([at(0, 0), at(0, 240), at(-150, 380)]);
    const toTheRight = figures([at(0, 0), at(0, 240), at(150, 380)]);
    for (const tee of toTheLeft.tees.slice(1)) expect(tee.at.x).toBe(SETTINGS['proposed-tee-aside']);
    for (const tee of toTheRight.tees.slice(1)) expect(tee.at.x).toBe(-SETTINGS['proposed-tee-aside']);
  });

  test('on a one-shot hole leaves the same share of the drive', () => {
    const hole = figures([at(0, 0), at(0, 150)]);
    expect(hole.tees[1]?.at).toEqual(at(15, 30)); // 150 · (1 − 200/250)
  });

  test('is not one that the designer placed', () => {
    const placed = plainHole('h', [at(0, 0), at(0, 400)], { tees: { back: at(0, 0), middle: at(3, 60) } });
    const { tees } = holeFigures(placed, TEES, SETTINGS);
    expect(tees.map(({ proposed }) => proposed)).toEqual([false, false, true]);
    expect(tees[1]?.at).toEqual(at(3, 60));
  });
});

describe('a hole', () => {
  test('without tee or green says what is missing and nothing else', () => {
    const { green: _, ...noGreen } = plainHole('h', [at(0, 0), at(0, 400)]);
    expect(holeFigures(noGreen, TEES, SETTINGS)).toMatchObject({ missing: 'green', centreline: [], tees: [] });
    const noTee = plainHole('h', [at(0, 0), at(0, 400)], { tees: {} });
    expect(holeFigures(noTee, TEES, SETTINGS)).toMatchObject({ missing: 'tee', par: { men: 0, women: 0 } });
  });

  test('of no length at all has figures without surprises', () => {
    const hole = figures([at(5, 5), at(5, 5)]);
    expect(hole.corridor).toEqual([]);
    expect(hole.bearing).toBe(0);
    expect(hole.tees.every(({ measuredLength }) => Number.isFinite(measuredLength))).toBe(true);
  });

  test('bends to the side that play turns to', () => {
    const [left] = figures([at(0, 0), at(0, 240), at(-100, 340)]).bends;
    expect(left?.side).toBe('left');
    expect(left?.angle).toBeCloseTo(Math.PI / 4, 6);
    expect(figures([at(0, 0), at(0, 240), at(100, 340)]).bends[0]?.side).toBe('right');
    expect(figures([at(0, 0), at(0, 240), at(0, 340)]).bends).toEqual([]);
  });

  test('has its landing areas where full shots finish, round the bend', () => {
    const hole = figures([at(0, 0), at(0, 200), at(200, 200)], TEES.slice(0, 1));
    expect(hole.tees[0]?.landingAreas).toEqual([at(28.6, 200)]); // 228.6 m along
  });

  test('leaves a landing area near the green to the green: at the turn, or none on a straight hole', () => {
    expect(figures([at(0, 0), at(0, 200), at(70, 200)], TEES.slice(0, 1)).tees[0]?.landingAreas).toEqual([at(0, 200)]);
    expect(figures([at(0, 0), at(0, 270)], TEES.slice(0, 1)).tees[0]?.landingAreas).toEqual([]);
  });

  test('is as wide as its corridor says at tee, landing area and green', () => {
    const { corridorStations } = figures([at(0, 0), at(0, 400)], TEES.slice(0, 1));
    expect(corridorStations).toEqual([
      { along: 0, halfWidth: 23 },
      { along: 228.6, halfWidth: 46 },
      { along: 400, halfWidth: 30 },
    ]);
  });
});

test('directions fall into the eight sectors of the compass', () => {
  const compass = [at(0, 1), at(1, 1), at(1, 0), at(1, -1), at(0, -1), at(-1, -1), at(-1, 0), at(-1, 1)];
  expect(compass.map(sectorOf)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  expect(sectorOf(at(0.4, 1))).toBe(0); // 21.8°
  expect(sectorOf(at(0.42, 1))).toBe(1); // 22.8°
  expect(sectorOf(at(0, 0))).toBeUndefined();
});
