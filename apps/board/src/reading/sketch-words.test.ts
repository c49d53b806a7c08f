import { expect, test } from 'vitest';
import { legSum, sketchValue } from './sketch-words.ts';

const at = (x: number, y: number) => ({ x, y });

// Worked by hand: the right triangle of sides 30, 40 and 50 m has 600 m² and 120 m around.
const TRIANGLE = [at(0, 0), at(40, 0), at(40, 30)];

test('an area says what lies in it and the way around it', () => {
  const shape = { kind: 'measured area', ring: TRIANGLE } as const;
  expect(sketchValue(shape, 'metres')).toBe('600 m², 120 m around');
  // 600 ÷ 0.83612736 = 717.6 yd²; 120 ÷ 0.9144 = 131.2 yd.
  expect(sketchValue(shape, 'yards')).toBe('718 yd², 131 yd around');
});

test('an area drawn clockwise is as large', () => {
  const shape = { kind: 'measured area', ring: [...TRIANGLE].reverse() } as const;
  expect(sketchValue(shape, 'metres')).toBe('600 m², 120 m around');
});

test('one leg says its bearing, several how many they are', () => {
  expect(sketchValue({ kind: 'measured line', points: [at(0, 0), at(100, 100)] }, 'metres')).toBe(
    '141 m, bearing 045°', // 100·√2 = 141.42
  );
  expect(sketchValue({ kind: 'measured line', points: TRIANGLE }, 'metres')).toBe('70 m in 2 legs');
});

test('a rod says its legs and their sum as it is shown', () => {
  const rod = { kind: 'rod', points: [at(0, 0), at(0, 265), at(0, 405)] } as const;
  expect(sketchValue(rod, 'metres')).toBe('265 + 140 = 405 m');
  // 265 m = 289.8 yd, 140 m = 153.1 yd: rounded one by one, then summed.
  expect(sketchValue(rod, 'yards')).toBe('290 + 153 = 443 yd');
  expect(legSum([1200], 'metres')).toBe('1,200 m');
});

test('a ring says its radius', () => {
  expect(sketchValue({ kind: 'ring', radius: 30, about: { at: at(0, 0) } }, 'metres')).toBe('30 m from the middle');
});
