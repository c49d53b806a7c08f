import type { Sketch } from '@loopwright/model';
import { expect, test } from 'vitest';
import { ANALYSIS, PLAN, ROUTING } from '../../../reading/two-holes.test-plan.ts';
import { sketchRows } from './sketches-view.ts';

const ground = { plan: PLAN, routing: ROUTING, analysis: ANALYSIS };
const sketch = (id: string, shape: Sketch['shape'], over: Partial<Sketch> = {}): Sketch => ({
  id,
  shape,
  by: 'Jo Oram',
  ink: 1,
  kept: false,
  ...over,
});

test('the newest is first; each says what it is, what is read off it and whose it is', () => {
  const about = { routing: 'a', hole: 'h1', part: 'green' } as const;
  const rows = sketchRows(
    [
      sketch(
        'k1',
        {
          kind: 'measured line',
          points: [
            { x: 0, y: 0 },
            { x: 0, y: 91.44 },
          ],
        },
        { note: 'to the oak' },
      ),
      sketch('k2', { kind: 'ring', radius: 30, about }, { kept: true }),
    ],
    ground,
    'yards',
  );
  expect(rows).toMatchObject([
    { id: 'k2', title: 'Clearance ring about green 1', value: '33 yd from the middle', kept: true, note: '' },
    { id: 'k1', title: 'Measured line', value: '100 yd, bearing 000°', by: 'Jo Oram', note: 'to the oak' },
  ]);
  expect(rows.map(({ at }) => at)).toEqual([
    { x: 0, y: 365.76 },
    { x: 0, y: 45.72 },
  ]);
});

test('a ring on another routing says so, and cannot be gone to', () => {
  const about = { routing: 'b', hole: 'h1', part: 'green' } as const;
  const [row] = sketchRows([sketch('k1', { kind: 'ring', radius: 30, about })], ground, 'metres');
  expect(row?.title).toBe('Clearance ring on another routing');
  expect(row?.at).toBeUndefined();
});
