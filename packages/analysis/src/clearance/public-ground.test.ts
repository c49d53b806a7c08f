import { expect, test } from 'vitest';
import { checkHoleFeatures } from './features.ts';
import { laidWay, siteOf } from './laid-feature.ts';
import { LIMITS, laidHole } from './laid-hole.ts';

const north = laidHole('a', [
  [0, 0],
  [0, 400],
]);
const found = (hole: ReturnType<typeof laidHole>, ...ways: ReturnType<typeof laidWay>[]) =>
  checkHoleFeatures(hole, siteOf(...ways), LIMITS);

// The ordinance: 75 ft = 22.86 m at the tee, 150 ft = 45.72 m at the landing area, 100 ft = 30.48 m at the green.
test.each([
  [22.8, 'stop', 'public-tee-stop', 22.86],
  [22.9, 'look', 'public-look', 60],
  [59.999, 'look', 'public-look', 60],
  [60, undefined, undefined, undefined],
])('a road end %f m beside the tee: %s', (apart, severity, setting, limit) => {
  const [finding] = found(
    north,
    laidWay('public road', [
      [apart, 0],
      [apart + 300, -20],
    ]),
  );
  expect(finding?.severity).toBe(severity);
  expect(finding?.setting).toBe(setting);
  expect(finding?.limit).toBe(limit);
  if (finding) expect(finding).toMatchObject({ code: 'public-beside-line', measured: apart, safety: true });
});

test.each([
  [45.7, 'stop'],
  [45.8, 'look'],
])('a road all along, %f m off the line: %s at the landing area', (apart, severity) => {
  const [finding] = found(
    north,
    laidWay('public road', [
      [apart, -50],
      [apart, 450],
    ]),
  );
  expect(finding?.severity).toBe(severity);
});

test('a path that the line of play crosses is a stop', () => {
  const [finding, ...more] = found(
    north,
    laidWay('public path', [
      [-50, 100],
      [50, 100],
    ]),
  );
  expect(finding).toMatchObject({ severity: 'stop', measured: 0, detail: { kind: 'public path', lies: 'over' } });
  expect(finding?.place).toEqual({ type: 'point', at: { x: 0, y: 100 } });
  expect(more).toEqual([]);
});

test('a road straight on past the turn lies in the fan, far as it is from the line', () => {
  const bent = laidHole('a', [
    [0, 0],
    [0, 150],
    [200, 250],
  ]);
  const [finding] = found(
    bent,
    laidWay('public road', [
      [-80, 240],
      [-20, 240],
    ]),
  );
  // 240 m ahead the nearest of it is 20 m off the line of the shot; from the line of play about 90.
  expect(finding).toMatchObject({ code: 'public-in-fan', severity: 'stop', measured: 20, detail: { ahead: 240 } });
  expect(
    found(
      bent,
      laidWay('public road', [
        [-80, 250],
        [-70, 250],
      ]),
    ),
  ).toEqual([]);
});

test('ways of one kind come often in pieces: the worst is told, the others are counted', () => {
  const pieces = [
    laidWay(
      'public road',
      [
        [40, 100],
        [40, 200],
      ],
      'one',
    ),
    laidWay(
      'public road',
      [
        [30, 200],
        [30, 300],
      ],
      'two',
    ),
  ];
  const findings = found(north, ...pieces);
  expect(findings).toHaveLength(1);
  expect(findings[0]).toMatchObject({ features: ['two'], detail: { others: 1 } });
});
