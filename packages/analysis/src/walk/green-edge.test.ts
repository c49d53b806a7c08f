import type { Green, SitePoint } from '@loopwright/model';
import { describe, expect, test } from 'vitest';
import { greenEdge } from './green-edge.ts';

const at = (x: number, y: number): SitePoint => ({ x, y });
/** 30 m long to the east, 20 m wide. */
const OVAL: Green = { centre: at(100, 100), length: 30, width: 20, bearing: Math.PI / 2 };

describe('the edge of a green', () => {
  test('is half its length away along it, half its width across it', () => {
    expect(greenEdge(OVAL, at(200, 100)).x).toBeCloseTo(115, 6);
    expect(greenEdge(OVAL, at(100, 0)).y).toBeCloseTo(90, 6);
  });

  test('between them lies on the oval: (x/15)² + (y/10)² = 1', () => {
    const { x, y } = greenEdge(OVAL, at(160, 180));
    expect(((x - 100) / 15) ** 2 + ((y - 100) / 10) ** 2).toBeCloseTo(1, 9);
  });

  test('is the place itself when that lies on the green', () => {
    expect(greenEdge(OVAL, at(105, 100))).toEqual(at(105, 100));
    expect(greenEdge(OVAL, OVAL.centre)).toEqual(OVAL.centre);
  });

  test('of an outline is where the way leaves it last', () => {
    const outline = [at(-10, -10), at(20, -10), at(20, 10), at(-10, 10)];
    expect(greenEdge({ ...OVAL, outline }, at(200, 100))).toEqual(at(120, 100));
  });
});
