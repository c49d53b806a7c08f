import type { Sketch } from '@loopwright/model';
import { expect, test } from 'vitest';
import { PLAN } from '../../reading/two-holes.test-plan.ts';
import { openLandTargets } from './hit-site.ts';

const at = (x: number, y: number) => ({ x, y });
const sketch = (id: string, shape: Sketch['shape']): Sketch => ({ id, shape, by: 'Ann', ink: 0, kept: false });
const about = { routing: 'a', hole: 'h1', part: 'green' } as const;
const sketches = [
  sketch('k1', { kind: 'measured line', points: [at(0, 0), at(100, 0)] }),
  sketch('k2', { kind: 'ring', radius: 30, about }),
];
const source = { site: { ...PLAN.site, sketches }, grips: [], chosen: undefined };

test('a sketch is picked out by its line, a ring where it is now', () => {
  const targets = openLandTargets()({ ...source, centreOf: () => at(300, 300) });
  expect(targets.line(at(50, 4), 6)).toMatchObject({ thing: { kind: 'sketch', id: 'k1' }, by: 'line' });
  expect(targets.line(at(300, 328), 6)).toMatchObject({ thing: { kind: 'sketch', id: 'k2' } });
  expect(targets.line(at(300, 310), 6)).toBeUndefined();
});

test('a ring that is not on this drawing is not hit', () => {
  expect(openLandTargets()(source).line(at(300, 328), 6)).toBeUndefined();
});
