import { expect, test } from 'vitest';
import { outlined, oval, sized, turned } from './green-shapes.ts';

const OVAL = { length: 30, width: 20, bearing: 0 };
/** 20 m wide and 30 m long, pointing north. */
const SQUARE_ISH = [
  { x: -10, y: -15 },
  { x: 10, y: -15 },
  { x: 10, y: 15 },
  { x: -10, y: 15 },
];

test('a green stays within what a green can be', () => {
  expect(sized(OVAL, { length: -5 }).length).toBe(4);
  expect(sized(OVAL, { width: 900 }).width).toBe(200);
});

test('an outline of its own is stretched along and across the axis of the green', () => {
  const longer = sized({ ...OVAL, outline: SQUARE_ISH }, { length: 60 });
  expect(longer).toMatchObject({ length: 60, width: 20 });
  expect(longer.outline?.[2]).toEqual({ x: 10, y: 30 });
});

test('a quarter turn takes an outline with it: what pointed north points east', () => {
  const { outline, bearing } = turned({ ...OVAL, outline: SQUARE_ISH }, Math.PI / 2);
  expect(bearing).toBeCloseTo(Math.PI / 2, 6);
  expect(outline?.[2]).toEqual({ x: 15, y: -10 });
});

test('a bearing is kept between nothing and a full turn', () => {
  expect(turned(OVAL, -Math.PI / 2).bearing).toBeCloseTo((3 * Math.PI) / 2, 6);
  expect(turned(OVAL, 2 * Math.PI).bearing).toBe(0);
});

test('a drawn outline gives the green its length and width; the oval comes back with them', () => {
  const drawn = outlined({ ...OVAL, length: 99, width: 99 }, SQUARE_ISH);
  expect(drawn).toMatchObject({ length: 30, width: 20 });
  expect(oval(drawn)).toEqual(OVAL);
});
