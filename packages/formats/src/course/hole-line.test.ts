import { distanceBetween, polylineLength } from '@loopwright/geometry';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { joinedPieces, simplifiedLine } from './hole-line.ts';

const at = (x: number, y: number) => ({ x, y });

test('pieces drawn in any direction are joined where they meet', () => {
  const { line, gap } = joinedPieces([
    [at(0, 0), at(0, 100)],
    [at(50, 300), at(0, 100)],
  ]);
  expect(line).toEqual([at(0, 0), at(0, 100), at(50, 300)]);
  expect(gap).toBe(0);
});

test('a gap between pieces is bridged and measured', () => {
  expect(
    joinedPieces([
      [at(0, 0), at(0, 100)],
      [at(0, 130), at(0, 300)],
    ]).gap,
  ).toBe(30);
});

test('a line with up to three turn points stays as it is mapped', () => {
  const line = [at(0, 0), at(10, 100), at(30, 200), at(80, 300), at(160, 380)];
  expect(simplifiedLine(line)).toEqual({ line, dropped: 0, lengthChange: 0, isSpread: false });
});

test('of five points on two straight legs the bend is kept', () => {
  const line = [at(0, 0), at(0, 80), at(0, 160), at(0, 240), at(60, 300), at(120, 360)];
  const simple = simplifiedLine(line);
  expect(simple.line).toContainEqual(at(0, 240));
  expect(simple.line.length).toBeLessThanOrEqual(5);
  expect(Math.abs(simple.lengthChange)).toBeLessThan(1e-9);
});

test('a simplified line starts and ends where the mapped one does and keeps its length within 1 in 1,000', () => {
  const step = fc.record({
    x: fc.double({ min: -25, max: 25, noNaN: true }),
    y: fc.double({ min: 20, max: 60, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(step, { minLength: 5, maxLength: 14 }), (steps) => {
      const line = [at(0, 0)];
      for (const { x, y } of steps) line.push(at((line.at(-1)?.x ?? 0) + x, (line.at(-1)?.y ?? 0) + y));
      const simple = simplifiedLine(Object.freeze(line));
      expect(simple.line.length).toBeLessThanOrEqual(5);
      expect(simple.line[0]).toEqual(line[0]);
      expect(simple.line.at(-1)).toEqual(line.at(-1));
      const length = polylineLength(line);
      expect(Math.abs(polylineLength(simple.line) - length)).toBeLessThanOrEqual(length * 0.001 + 1e-6);
    }),
  );
});

test('the arc of a dogleg keeps its turn points within a few metres of the arc', () => {
  const arc = Array.from({ length: 13 }, (_, i) => {
    const angle = (i / 12) * (Math.PI / 3);
    return at(400 * Math.sin(angle), 400 - 400 * Math.cos(angle));
  });
  const { line } = simplifiedLine(arc);
  for (const point of line) {
    const off = Math.abs(distanceBetween(point, at(0, 400)) - 400);
    expect(off).toBeLessThan(5);
  }
});
