import { expect, test } from 'vitest';
import type { SnapWishes } from '../instrument.ts';
import { type LineOfPlay, legGuides } from './leg-guides.ts';
import { pulled } from './pulled.ts';

const at = (x: number, y: number) => ({ x, y });
const words = { number: (hole: string) => hole, length: (metres: number) => `${Math.round(metres)} m` };

function pull(point: { x: number; y: number }, wishes: SnapWishes, lines: readonly LineOfPlay[] = []) {
  return pulled(point, legGuides(wishes, { drive: 240, lines, at: point, words }), 12);
}

test('a first turn lies on the drive', () => {
  expect(pull(at(3, 235), { for: 'turn', from: at(3, 0) })).toMatchObject({
    at: at(3, 240),
    because: 'on the drive: 240 m',
  });
});

test('a second turn does not: it goes straight on, or square, or as far as the leg before', () => {
  const wishes = { for: 'turn', before: at(0, 0), from: at(0, 200) } as const;
  expect(pull(at(4, 290), wishes)).toMatchObject({ at: at(0, 290), because: 'straight on' });
  expect(pull(at(90, 204), wishes)).toMatchObject({ at: at(90, 200), because: 'square to the leg before' });
  expect(pull(at(-90, 204), wishes)).toMatchObject({ at: at(-90, 200), because: 'square to the leg before' });
  // 120, 160, 200 is 3, 4, 5: as far from the turn as the turn is from the tee.
  expect(pull(at(121.2, 361.6), wishes)).toMatchObject({
    at: at(120, 360),
    because: 'as long as the leg before: 200 m',
  });
});

test('drawn back from the green the tee lies on the drive from the turn', () => {
  const wishes = { for: 'turn or tee', before: at(0, 140), from: at(0, 0) } as const;
  expect(pull(at(100, -225), wishes).because).toContain('on the drive');
  expect(pull(at(0, -100), { for: 'turn or tee', from: at(0, 0) }).because).toBeUndefined();
});

test('a green makes the hole as long as the one beside it', () => {
  const beside = { hole: '4', points: [at(60, 0), at(60, 240), at(60, 400)] };
  const wishes = { for: 'green', before: at(0, 0), from: at(0, 240), along: 240 } as const;
  // 400 in all: 160 from the turn, straight on.
  expect(pull(at(1, 398), wishes, [beside])).toMatchObject({
    at: at(0, 400),
    because: 'straight on, as long as 4: 400 m',
  });
});

test('a leg is laid parallel to the nearest line of play', () => {
  const slanting = { hole: '7', points: [at(100, 0), at(400, 400)] };
  // The direction 3, 4 of 5 from the origin, 200 m out: 120, 160.
  const met = pull(at(122, 158.5), { for: 'turn or green', from: at(0, 0) }, [slanting]);
  expect(met.because).toBe('parallel to 7');
  expect(met.at.x / met.at.y).toBeCloseTo(3 / 4, 4);
});

test('a hole far away is not beside', () => {
  const far = { hole: '9', points: [at(2000, 0), at(2000, 100)] };
  expect(pull(at(100, 3), { for: 'green', from: at(0, 0) }, [far]).because).toBeUndefined();
});

test('without a point to start from nothing pulls', () => {
  expect(legGuides({ for: 'turn' }, { drive: 240, lines: [], at: at(0, 0), words })).toEqual([]);
});
