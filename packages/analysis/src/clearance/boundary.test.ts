import type { Boundary } from '@loopwright/model';
import { expect, test } from 'vitest';
import { checkHoleBoundary } from './boundary.ts';
import { LIMITS, laidHole } from './laid-hole.ts';
import { siteEdges } from './site-edges.ts';

/** A site 1,000 m square whose west edge is the y axis. */
const square = (tolerance: number, inner: Boundary['inner'] = []): Boundary => ({
  outlines: [
    [
      { x: 0, y: -300 },
      { x: 1000, y: -300 },
      { x: 1000, y: 700 },
      { x: 0, y: 700 },
    ],
  ],
  inner,
  tolerance,
});
const surveyed = siteEdges(square(0));

const found = (code: string, hole: ReturnType<typeof laidHole>, edges = surveyed) =>
  checkHoleBoundary(hole, edges, LIMITS).find((finding) => finding.code === code);

/** Line, landing area, green and tee all as far from the west edge. */
const beside = (x: number) =>
  laidHole('a', [
    [x, 0],
    [x, 400],
  ]);

test.each([
  ['edge-line', -0.001, 'stop'],
  ['edge-line', 0.001, 'look'],
  ['edge-line', 15, 'mention'],
  ['edge-line', 30, undefined],
  ['edge-landing', 9.999, 'stop'],
  ['edge-landing', 10, 'look'],
  ['edge-landing', 20, 'mention'],
  ['edge-landing', 46, undefined],
  ['edge-green', 4.999, 'stop'],
  ['edge-green', 5, 'look'],
  ['edge-green', 15, 'mention'],
  ['edge-green', 30, undefined],
  ['edge-tee', -0.001, 'stop'],
  ['edge-tee', 0.001, 'mention'],
  ['edge-tee', 10, undefined],
] as const)('%s %f m from the boundary: %s', (code, x, severity) => {
  const finding = found(code, beside(x));
  expect(finding?.severity).toBe(severity);
  if (finding) expect(finding).toMatchObject({ measured: x, safety: true, unit: 'm', worse: 'less' });
});

test('a hole that leaves the site is measured by how far it is outside', () => {
  const outside = laidHole('a', [
    [100, 0],
    [-40, 200],
    [100, 400],
  ]);
  expect(found('edge-line', outside)?.measured).toBeLessThan(-35);
  expect(found('edge-line', outside)?.severity).toBe('stop');
});

test('a hole wholly off the site, far from its edge, is not passed over', () => {
  const away = laidHole('a', [
    [-500, 0],
    [-500, 400],
  ]);
  expect(found('edge-green', away)).toMatchObject({ severity: 'stop', measured: -500 });
});

test('what the drawn line may be off is taken off the limit', () => {
  const drawn = siteEdges(square(10));
  expect(found('edge-green', beside(4.999), drawn)).toMatchObject({
    severity: 'look',
    limit: 5,
    detail: { tolerance: 10 },
  });
  expect(found('edge-green', beside(-5.001), drawn)?.severity).toBe('stop');
  expect(found('edge-tee', beside(0.001), drawn)).toBeUndefined();
});

test("other people's land within the site is outside too", () => {
  const garden = [
    { x: 490, y: 180 },
    { x: 510, y: 180 },
    { x: 510, y: 220 },
    { x: 490, y: 220 },
  ];
  const edges = siteEdges(square(0, [garden]));
  expect(found('edge-line', beside(500), edges)).toMatchObject({ severity: 'stop', measured: -10 });
  expect(found('edge-line', beside(525), edges)).toMatchObject({ severity: 'mention', measured: 15 });
});

test('both ends of the line are left out', () => {
  // From (5, 0) straight inland: 60 m on, the edge is 65 m away.
  expect(
    found(
      'edge-line',
      laidHole('a', [
        [5, 0],
        [405, 0],
      ]),
    ),
  ).toBeUndefined();
});

test('a notch that reaches over the line between two places of it is found, as deep as it is', () => {
  // The line runs north 5 m inside the west edge; a notch 6 m wide goes 9 m in, 4 m past the line.
  const [ring = []] = square(0).outlines;
  const notch = [
    { x: 0, y: 198 },
    { x: 9, y: 198 },
    { x: 9, y: 192 },
    { x: 0, y: 192 },
  ];
  const notched = siteEdges({ outlines: [[...ring, ...notch]], inner: [], tolerance: 0 });
  const finding = found('edge-line', beside(5), notched);
  expect(finding?.severity).toBe('stop');
  // Furthest outside: the middle of the notch, 3 m from its sides.
  expect(Math.abs((finding?.measured ?? 0) + 3)).toBeLessThan(0.1);
});

test('far outside, the nearest edge counts wherever it lies', () => {
  const far = laidHole('a', [
    [-300, 0],
    [-300, 400],
  ]);
  expect(found('edge-green', far)?.measured).toBe(-300);
  const spike = [
    { x: 0, y: 201 },
    { x: -200, y: 200 },
    { x: 0, y: 199 },
  ];
  const [ring = []] = square(0).outlines;
  const spiked = siteEdges({ outlines: [[...ring, ...spike]], inner: [], tolerance: 0 });
  // From (−300, 400) to (−200, 200): √(100² + 200²) = 223.607.
  expect(found('edge-green', far, spiked)?.measured).toBe(-223.607);
});

test('the line between two pieces of land that belong to the site is no edge of it', () => {
  const [ring = []] = square(0).outlines;
  const west = ring.map(({ x, y }) => ({ x: x - 1000, y }));
  const both = siteEdges({ outlines: [ring, west], inner: [], tolerance: 0 });
  const across = laidHole('a', [
    [-150, 200],
    [250, 200],
  ]);
  expect(checkHoleBoundary(across, both, LIMITS)).toEqual([]);
  expect(found('edge-line', across)?.severity).toBe('stop');
});
