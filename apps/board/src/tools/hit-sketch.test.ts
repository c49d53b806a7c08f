import type { Sketch } from '@loopwright/model';
import { expect, test } from 'vitest';
import { distanceToSketch, sketchAt } from './hit-sketch.ts';

const at = (x: number, y: number) => ({ x, y });
const nowhere = () => undefined;
const sketch = (id: string, shape: Sketch['shape']): Sketch => ({ id, shape, by: 'Ann', ink: 0, kept: false });

// By hand: distances along the axes.
test('a sketch is hit on its line, an area on its outline and a ring on its circle', () => {
  const line = { kind: 'stroke', points: [at(0, 0), at(100, 0)] } as const;
  const area = { kind: 'measured area', ring: [at(0, 0), at(100, 0), at(100, 100), at(0, 100)] } as const;
  const ring = { kind: 'ring', radius: 30, about: { at: at(0, 0) } } as const;
  expect(distanceToSketch(line, at(50, 7), nowhere)).toBe(7);
  expect(distanceToSketch(area, at(50, 40), nowhere)).toBe(40);
  expect(distanceToSketch(ring, at(0, 26), () => at(0, 0))).toBe(4);
  expect(distanceToSketch(ring, at(0, 26), nowhere)).toBe(Number.POSITIVE_INFINITY);
});

test('of several the nearest is hit, and the last drawn of two that lie on each other', () => {
  const sketches = [
    sketch('k1', { kind: 'stroke', points: [at(0, 0), at(100, 0)] }),
    sketch('k2', { kind: 'stroke', points: [at(0, 8), at(100, 8)] }),
    sketch('k3', { kind: 'stroke', points: [at(0, 8), at(100, 8)] }),
  ];
  expect(sketchAt(sketches, at(50, 1), 12, nowhere)?.id).toBe('k1');
  expect(sketchAt(sketches, at(50, 7), 12, nowhere)?.id).toBe('k3');
  expect(sketchAt(sketches, at(50, 40), 12, nowhere)).toBeUndefined();
});
