import { closestOnPolyline } from '@loopwright/geometry';
import { type SitePoint, seededRandom } from '@loopwright/model';
import { expect, test } from 'vitest';
import { drawnOn, liveStroke, writtenStroke } from './stroke.ts';

/** A hand that wanders far from the site's origin, where coordinates are long. */
function wander(points: number, seed: number) {
  const random = seededRandom(seed);
  let [x, y, heading] = [412_345.678, -98_765.432, 0];
  return Array.from({ length: points }, () => {
    heading += (random() - 0.5) * 1.2;
    x += 3 * Math.cos(heading);
    y += 3 * Math.sin(heading);
    return { x, y };
  });
}

test('a stroke is written in 500 points at most, and nowhere strays further than it must', () => {
  const drawn = wander(400, 3);
  const written = writtenStroke(drawn, 1);
  expect(written.length).toBeLessThan(drawn.length);
  for (const p of drawn) expect(closestOnPolyline(p, written).distance).toBeLessThan(0.42);
  expect(writtenStroke(wander(9_000, 4), 8).length).toBeLessThanOrEqual(500);
});

test('however long a stroke is, the others are sent less than a message holds', () => {
  for (const points of [2, 200, 3_000, 9_000]) {
    const sketch = { edit: 'add sketch', sketch: { id: 'kabcdefghij', by: 'n'.repeat(60), ink: 7, kept: false } };
    const sent = JSON.stringify([sketch, liveStroke(wander(points, 5), 2)]);
    expect(sent.length).toBeLessThan(3_700);
  }
});

test('trembling adds nothing, and a stroke that goes on is thinned before it grows too long', () => {
  const one = [{ x: 0, y: 0 }];
  expect(drawnOn(one, { x: 0.5, y: 0.5 }, 2)).toBe(one);
  expect(drawnOn(one, { x: 1, y: 0 }, 2)).toHaveLength(2);
  const stroke = wander(8_000, 6).reduce<readonly SitePoint[]>((line, at) => drawnOn(line, at, 1), []);
  expect(stroke.length).toBeLessThanOrEqual(3_000);
});
