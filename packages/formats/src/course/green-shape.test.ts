import { expect, test } from 'vitest';
import { greenShapeOf, measuredCentre } from './green-shape.ts';

const at = (x: number, y: number) => ({ x, y });
const box = [at(100, 200), at(130, 200), at(130, 220), at(100, 220)];

test('a green of 30 by 20 m lying east to west is that long, that wide, and lies at 90°', () => {
  const shape = greenShapeOf(box, at(115, 210));
  expect(shape).toMatchObject({ length: 30, width: 20, bearing: 1.570796 });
  expect(shape.outline).toEqual([at(-15, -10), at(15, -10), at(15, 10), at(-15, 10)]);
});

test('turned by 30° it keeps its size and lies 30° farther round', () => {
  const [cos, sin] = [Math.cos(-Math.PI / 6), Math.sin(-Math.PI / 6)];
  const turned = box.map(({ x, y }) => at(x * cos - y * sin, x * sin + y * cos));
  const shape = greenShapeOf(turned, at(0, 0));
  expect(shape.length).toBeCloseTo(30, 3);
  expect(shape.width).toBeCloseTo(20, 3);
  expect(shape.bearing).toBeCloseTo(Math.PI / 2 + Math.PI / 6, 5);
});

// Worked example after CONGU appendix A: from the pivot, front edge read at 168, back edge at 196: the centre is at 182.
test('the centre is the mean of the readings to front and back edge on the line of play', () => {
  const green = [at(-12, 168), at(12, 168), at(12, 196), at(-12, 196)];
  expect(measuredCentre(green, at(0, 0))).toEqual(at(0, 182));
});
