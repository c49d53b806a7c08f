import { expect, test } from 'vitest';
import { laidArea, laidWay, siteOf } from './laid-feature.ts';
import { LIMITS, laidHole } from './laid-hole.ts';
import { checkHoleOnSite, siteGround } from './site-ground.ts';

/** 150 m wide, 300 m long, its stands along the x axis beside the base, played north. */
const range = laidArea('range', [
  [-75, 0],
  [75, 0],
  [75, 300],
  [-75, 300],
]);
const bases = [{ id: 'house', name: 'House', apron: { x: 0, y: -40 }, footprints: [] }];
const ground = siteGround(siteOf(range), bases, LIMITS);

/** A short hole played away from the range, its tee at this place. */
const found = (x: number, y: number) =>
  checkHoleOnSite(
    laidHole('a', [
      [x, y],
      [x + 120, y - 40],
    ]),
    ground,
    LIMITS,
  );

// 200 m out: tan 10° × 200 = 35.3 m and tan 15° × 200 = 53.6 m beyond the ends of the stands, 75 m from the middle.
test.each([
  [74, 'stop'],
  [76, 'look'],
  [110, 'look'],
  [111, 'mention'],
  [128, 'mention'],
  [129, undefined],
])('a tee 200 m out and %f m from the middle of the range: %s', (aside, severity) => {
  const [finding] = found(aside, 200);
  expect(finding?.severity).toBe(severity);
  if (finding) expect(finding).toMatchObject({ code: 'in-range-fan', features: ['range'], safety: true });
});

test('behind the stands and beyond its reach the range says nothing', () => {
  expect(found(0, -50)).toEqual([]);
  expect(found(80, 290)).toEqual([]);
});

test('without a base the range is played from where its outline was begun', () => {
  const alone = siteGround(siteOf(range), [], LIMITS);
  expect(
    checkHoleOnSite(
      laidHole('a', [
        [0, -50],
        [120, -90],
      ]),
      alone,
      LIMITS,
    ),
  ).toEqual([]);
});

test('public ground in the fan is found once for the site, whatever the holes', () => {
  const path = laidWay('public path', [
    [90, 200],
    [90, 240],
  ]);
  const [finding] = siteGround(siteOf(range, path), bases, LIMITS).findings;
  expect(finding).toMatchObject({ code: 'range-and-public', severity: 'stop', holes: [], measured: 15 });
  expect(
    siteGround(
      siteOf(
        range,
        laidWay('public road', [
          [200, 0],
          [200, 240],
        ]),
      ),
      bases,
      LIMITS,
    ).findings,
  ).toEqual([]);
});
