import { seededRandom } from '@loopwright/model';
import { describe, expect, test } from 'vitest';
import { boundsOf } from './bounds.ts';
import { boxIndex } from './box-index.ts';
import { corridorOutline } from './corridor-outline.ts';
import { ringArea, ringContains } from './ring.ts';
import { ringIsSimple } from './ring-simple.ts';

const STRAIGHT = [
  { x: 0, y: 0 },
  { x: 0, y: 100 },
];

describe('a corridor', () => {
  test('of even width is its length times its width, and the half round behind', () => {
    const area = ringArea(corridorOutline(STRAIGHT, [10, 10]));
    // Half of a regular 16-gon of radius 10: 4 · r² · 2 · sin 22.5° = 306.147, against 314.159 of the circle.
    expect(area).toBeCloseTo(2000 + 2 * 4 * 100 * Math.sin(Math.PI / 8) * 0.5, 6);
  });

  test('that tapers is a trapezium: half the sum of its widths', () => {
    const area = ringArea(corridorOutline(STRAIGHT, [10, 20], 0));
    expect(area).toBeCloseTo(3000, 6);
  });

  test('keeps every place of its line inside, round a bend too', () => {
    const bent = [...STRAIGHT, { x: 80, y: 160 }];
    const outline = corridorOutline(bent, [10, 20, 15]);
    expect(ringIsSimple(outline)).toBe(true);
    expect(ringContains(outline, { x: 0, y: 50 })).toBe(true);
    expect(ringContains(outline, { x: 0, y: 100 })).toBe(true);
    expect(ringContains(outline, { x: 40, y: 130 })).toBe(true);
    expect(ringContains(outline, { x: 90, y: 167 })).toBe(true);
    expect(ringContains(outline, { x: 0, y: -1 })).toBe(false);
  });

  test('of points that coincide, or of one, is nothing', () => {
    expect(corridorOutline([STRAIGHT[0] ?? { x: 0, y: 0 }], [10])).toEqual([]);
    expect(
      corridorOutline(
        [
          { x: 1, y: 1 },
          { x: 1, y: 1 },
        ],
        [10, 10],
      ),
    ).toEqual([]);
    expect(() => corridorOutline(STRAIGHT, [10])).toThrow(RangeError);
  });
});

test('the index of boxes finds what trying each box finds', () => {
  const random = seededRandom(20_260_506);
  const boxes = Array.from({ length: 200 }, () => {
    const at = { x: random() * 1000, y: random() * 1000 };
    return boundsOf([at, { x: at.x + random() * 60, y: at.y + random() * 60 }]);
  });
  const index = boxIndex(boxes);
  for (const box of boxes) {
    const tried = boxes.flatMap((other, place) =>
      other.minX <= box.maxX && other.maxX >= box.minX && other.minY <= box.maxY && other.maxY >= box.minY
        ? [place]
        : [],
    );
    expect(index.search(box)).toEqual(tried);
  }
  expect(boxIndex([]).search({ minX: 0, minY: 0, maxX: 1, maxY: 1 })).toEqual([]);
});
