import { expect, test } from 'vitest';
import { openViewpoint } from '../drawing/viewpoint.ts';
import type { PointerAt } from '../tools/tool.ts';
import { openTestHand } from './hand.test-hand.ts';
import { openPointerWork } from './pointer-work.ts';

/** Half a pixel a metre, as a viewpoint begins: a site point is twice its canvas point, y turned over. */
const at = (x: number, y: number, kind: PointerAt['kind'] = 'mouse'): PointerAt => ({
  canvas: { x, y },
  site: { x: 2 * x, y: -2 * y },
  kind,
});
const first = (time: number) => ({ button: 'first', time }) as const;

function working(finger?: 'aims' | 'strokes') {
  const { hand, told } = openTestHand(finger);
  const waiting: (() => void)[] = [];
  const work = openPointerWork(hand, {
    viewpoint: openViewpoint(),
    after: (_, does) => {
      waiting.push(does);
      return () => waiting.splice(waiting.indexOf(does), 1);
    },
  });
  const longAfter = () => {
    for (const does of waiting.splice(0)) does();
  };
  return { work, told, hand, longAfter };
}

test('a mouse hovers and presses; a second press in the same place is the end', () => {
  const { work, told } = working();
  work.hover(at(10, 10));
  work.press(at(10, 10), first(0));
  work.press(at(12, 11), first(200));
  expect(told).toEqual(['hover 20 -20', 'press 20 -20', 'finish']);
});

test('two presses far apart, or slow, are two presses', () => {
  const { work, told } = working();
  work.press(at(10, 10), first(0));
  work.press(at(60, 10), first(100));
  work.press(at(60, 10), first(900));
  expect(told).toEqual(['press 20 -20', 'press 120 -20', 'press 120 -20']);
});

test('the second button makes it the last', () => {
  const { work, told } = working();
  work.press(at(10, 10), { button: 'second', time: 0 });
  expect(told).toEqual(['press 20 -20', 'finish']);
});

test('a tap presses where the finger was', () => {
  const { work, told } = working();
  work.press(at(10, 200, 'touch'), first(0)).end(at(11, 201, 'touch'));
  expect(told).toEqual(['press 20 -400']);
});

test('a finger that moves carries the cross above itself, and presses there when it is lifted', () => {
  const { work, told, hand } = working();
  const finger = work.press(at(10, 200, 'touch'), first(0));
  finger.move(at(50, 164, 'touch'));
  // 64 pixels above the finger: 100 on the canvas, 200 m south of the origin.
  expect(hand.point.get()).toEqual({ x: 50, y: 100 });
  finger.end(at(50, 164, 'touch'));
  expect(told).toEqual(['hover 100 -200', 'press 100 -200']);
});

test('a finger held still makes it the last, once', () => {
  const { work, told, longAfter } = working();
  const finger = work.press(at(10, 200, 'touch'), first(0));
  longAfter();
  finger.end(at(10, 200, 'touch'));
  expect(told).toEqual(['press 20 -400', 'finish']);
});

test('a second finger takes the press away', () => {
  const { work, told } = working();
  const finger = work.press(at(10, 200, 'touch'), first(0));
  finger.cancel();
  finger.end(at(10, 200, 'touch'));
  expect(told).toEqual([]);
});

test('a pencil presses where and when the finger comes down', () => {
  const { work, told } = working('strokes');
  work.press(at(10, 200, 'touch'), first(0));
  expect(told).toEqual(['press 20 -400']);
});

test('Alt snaps to nothing while it is held', () => {
  const { work, hand } = working();
  work.hover({ ...at(1, 1), alt: true });
  expect(hand.free.get()).toBe(true);
  work.hover(at(1, 1));
  expect(hand.free.get()).toBe(false);
});
