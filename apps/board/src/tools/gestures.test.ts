import { expect, test } from 'vitest';
import type { Hit } from './hit.ts';
import { at, hole, openHand } from './one-hole.test-hand.ts';
import { pinchBetween } from './pinch.ts';
import { beginGesture } from './tools.ts';

const TEE: Hit = { kind: 'part', hole: 'h1', part: 'tee:back', at: { x: 0, y: 0 } };
const GREEN: Hit = { kind: 'part', hole: 'h1', part: 'green', at: { x: 0, y: 300 } };
const move = (x: number, y: number) => ({
  edit: 'move part',
  routing: 'r1',
  hole: 'h1',
  part: 'tee:back',
  to: { x, y },
});

test('a part keeps the offset at which it was gripped, and is dropped once', () => {
  const { hand, did } = openHand();
  const gesture = beginGesture(TEE, at(5, 2), hand);
  gesture?.move(at(15, 2));
  gesture?.move(at(25, 12));
  gesture?.end(at(25, 12));
  expect(did).toEqual([{ hole: 'h1' }, move(10, 0), move(20, 10), 'drop']);
});

test('a press without a drag picks the part out and moves nothing', () => {
  const { hand, did } = openHand();
  const gesture = beginGesture(TEE, at(0, 0), hand);
  gesture?.move(at(1, 1));
  gesture?.end(at(1, 1));
  expect(did).toEqual([{ hole: 'h1', part: 'tee:back' }]);
});

test('a cancelled drag lets go and writes nothing, whatever the pointer does after', () => {
  const { hand, did } = openHand();
  const gesture = beginGesture(TEE, at(0, 0), hand);
  gesture?.move(at(10, 0));
  gesture?.cancel();
  gesture?.move(at(20, 0));
  gesture?.end(at(20, 0));
  expect(did).toEqual([{ hole: 'h1' }, move(10, 0), 'let go']);
});

test('a pinned part asks before it moves; so does a whole hole with a pinned part', () => {
  for (const hit of [GREEN, { kind: 'number', hole: 'h1' } as const]) {
    const { hand, did } = openHand();
    const gesture = beginGesture(hit, at(0, 300), hand);
    gesture?.move(at(30, 300));
    gesture?.end(at(30, 300));
    expect(did).toEqual([{ pinned: ['green'] }]);
  }
});

test('nothing on a locked routing moves', () => {
  const { hand, did } = openHand({ locked: true });
  const gesture = beginGesture(TEE, at(0, 0), hand);
  gesture?.move(at(30, 0));
  gesture?.end(at(30, 0));
  expect(did).toEqual(['locked']);
});

test('a hole is moved whole by its number', () => {
  const { hand, did } = openHand({ holes: [{ ...hole, pinned: [] }] });
  const gesture = beginGesture({ kind: 'number', hole: 'h1' }, at(0, 150), hand);
  gesture?.move(at(12, 145));
  gesture?.end(at(12, 145));
  expect(did).toEqual([{ hole: 'h1' }, { edit: 'move hole', routing: 'r1', hole: 'h1', by: { x: 12, y: -5 } }, 'drop']);
});

test('bare paper is dragged along; a press on it picks out nothing', () => {
  const { hand, did } = openHand();
  const gesture = beginGesture(undefined, at(0, 0), hand);
  gesture?.move(at(10, 0));
  gesture?.move(at(10, 5));
  gesture?.end(at(10, 5));
  expect(did).toEqual([{ pan: { x: 10, y: 0 } }, { pan: { x: 0, y: -5 } }]);
  const press = beginGesture(undefined, at(0, 0), hand);
  press?.end(at(0, 0));
  expect(did.at(-1)).toEqual({});
});

test('two fingers that part to twice their distance show it twice as near, about their middle', () => {
  const pinch = pinchBetween(
    [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
    ],
    [
      { x: -40, y: 10 },
      { x: 160, y: 10 },
    ],
  );
  expect(pinch).toEqual({ by: { x: 10, y: 10 }, factor: 2, about: { x: 60, y: 10 } });
  expect(
    pinchBetween(
      [
        { x: 5, y: 5 },
        { x: 5, y: 5 },
      ],
      [
        { x: 0, y: 0 },
        { x: 9, y: 0 },
      ],
    ).factor,
  ).toBe(1);
});
