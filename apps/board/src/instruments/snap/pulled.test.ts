import { expect, test } from 'vitest';
import { lineGuide, offsetGuide, placeGuide, ringGuide } from './guide.ts';
import { pulled } from './pulled.ts';

const at = (x: number, y: number) => ({ x, y });
const look = (because: string, strength: number) => ({ because, strength, reach: 1 });

test('a point beyond reach stays where it is', () => {
  expect(pulled(at(0, 20), [placeGuide(at(0, 0), look('a mark', 100))], 10)).toEqual({ at: at(0, 20) });
});

test('a place pulls before any line, however near the line', () => {
  const guides = [ringGuide(at(0, 0), 100, look('ring', 200)), placeGuide(at(104, 4), look('mark', 1))];
  expect(pulled(at(100, 0), guides, 10)).toEqual({ at: at(104, 4), because: 'mark' });
});

// 3, 4, 5: the point (63, 84) lies 105 from the origin, in the direction of (60, 80), 100 from it.
test('onto a ring along its radius', () => {
  expect(pulled(at(63, 84), [ringGuide(at(0, 0), 100, look('the drive', 1))], 10)).toMatchObject({
    at: at(60, 80),
    because: 'the drive',
  });
});

test('straight on holds ahead only', () => {
  const straight = lineGuide(at(0, 0), at(0, 1), 'ray', look('straight on', 1));
  expect(pulled(at(4, 50), [straight], 10).at).toEqual(at(0, 50));
  expect(pulled(at(4, -50), [straight], 10).because).toBeUndefined();
});

test('where two lines meet, both are said', () => {
  const guides = [
    lineGuide(at(0, 0), at(0, 1), 'ray', look('straight on', 1)),
    ringGuide(at(0, 0), 240, look('on the drive', 2)),
  ];
  expect(pulled(at(5, 236), guides, 10)).toMatchObject({ at: at(0, 240), because: 'on the drive, straight on' });
});

// The line x = 30 meets the circle of 50 about the origin at y = 40: 30² + 40² = 50².
test('a line meets a ring at a slant', () => {
  const guides = [
    lineGuide(at(30, 0), at(0, 1), 'both ways', look('parallel to 4', 1)),
    ringGuide(at(0, 0), 50, look('as long as 4', 2)),
  ];
  const met = pulled(at(32, 42), guides, 10).at;
  expect(met.x).toBeCloseTo(30, 2);
  expect(met.y).toBeCloseTo(40, 2);
});

test('rings side by side meet nowhere: the stronger pulls alone', () => {
  const guides = [ringGuide(at(0, 0), 100, look('one', 2)), ringGuide(at(0, 0), 104, look('other', 1))];
  expect(pulled(at(101, 0), guides, 10)).toMatchObject({ at: at(100, 0), because: 'one' });
});

test('a distance is kept on the side the point is on, and not within', () => {
  const bank = offsetGuide((p) => (p.y > 0 ? at(p.x, 0) : undefined), 15, look('15 m from the pond', 1));
  expect(pulled(at(7, 18), [bank], 10)).toEqual({
    at: at(7, 15),
    because: '15 m from the pond',
    guide: [at(7, 0), at(7, 15)],
  });
  expect(pulled(at(7, -3), [bank], 10).because).toBeUndefined();
});

test('the arc that is drawn lies on its ring', () => {
  const { guide = [] } = pulled(at(0, 101), [ringGuide(at(0, 0), 100, look('ring', 1))], 10);
  for (const { x, y } of guide) expect(Math.sqrt(x * x + y * y)).toBeCloseTo(100, 9);
  expect(guide.length).toBeGreaterThan(2);
});

test('a centre pulls nowhere, and a point on the centre asks for nothing impossible', () => {
  expect(pulled(at(0, 0), [ringGuide(at(0, 0), 5, look('ring', 1))], 10)).toEqual({ at: at(0, 0) });
});
