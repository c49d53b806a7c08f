import { expect, test } from 'vitest';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import { openReachChoice } from './reach-choice.ts';
import { startReach } from './start-reach.ts';

const at = (x: number, y: number) => ({ x, y });

function openReachInHand(parts: Parameters<typeof openFakeBench>[0] = {}) {
  const board = openFakeBench(parts);
  return { ...board, running: startReach(board.bench, openReachChoice()) };
}
type Running = ReturnType<typeof openReachInHand>['running'];
const tap = (running: Running, x: number, y: number) => running.press(mouseAt(x, y), undefined)?.end(mouseAt(x, y));

test('from a point the distance and the club run with the pointer; nothing is written', () => {
  const { running, written, shown } = openReachInHand();
  tap(running, 0, 0);
  running.hover(mouseAt(0, 160));
  // 160 m is 175 yd: 0.69 of the 250 yd driver is 172.5, 0.73 is 182.5.
  expect(running.picture.get().atPointer).toEqual(['160 m, bearing 000°', 'scratch man: 6 iron']);
  expect(written).toEqual([]);
  expect(shown()).toBeUndefined();
});

test('one press of Enter leaves a hole to where the pointer is, with its turn on the drive', () => {
  const { running, written } = openReachInHand();
  tap(running, 0, 0);
  running.hover(mouseAt(0, 380));
  running.finish?.();
  expect(written[0]).toMatchObject({
    edit: 'draw hole',
    tees: { back: at(0, 0) },
    turnPoints: [{ at: at(0, 228.6) }],
    green: { centre: at(0, 380) },
  });
  expect(running.letGo()).toBe(false);
});

test('a turn that was set is kept, and the reach goes on from there', () => {
  const { running, written } = openReachInHand();
  tap(running, 0, 0);
  running.hover(mouseAt(0, 220));
  running.turn();
  running.hover(mouseAt(120, 340));
  // √(120² + 120²) = 169.7 m = 185.6 yd, within the second shot of 220 yd: 5 iron, 0.73 of 250 = 182.5.
  expect(running.picture.get().atPointer).toEqual(['170 m, bearing 045°', 'scratch man: 5 iron']);
  running.finish?.();
  expect(written[0]).toMatchObject({ turnPoints: [{ at: at(0, 220) }], green: { centre: at(120, 340) } });
});

test('a press holds the aim while the hand goes to a button; the start is moved by a press on it', () => {
  const { running, written } = openReachInHand();
  tap(running, 0, 0);
  tap(running, 0, 150);
  running.hover(mouseAt(500, 500));
  expect(running.picture.get().atPointer?.[0]).toBe('150 m, bearing 000°');
  tap(running, 2, 2);
  running.hover(mouseAt(30, 0));
  tap(running, 30, 0);
  running.hover(mouseAt(30, 170));
  running.finish?.();
  expect(written[0]).toMatchObject({ tees: { back: at(30, 0) }, green: { centre: at(30, 170) } });
});

test('a length may be typed, in the direction of the pointer or with its bearing', () => {
  const { running } = openReachInHand();
  expect(running.enter?.('150')).toEqual(expect.any(String));
  expect(running.enter?.('10, 20')).toBeUndefined();
  expect(running.enter?.('150')).toMatch(/bearing/);
  expect(running.enter?.('150 @ 90')).toBeUndefined();
  expect(running.picture.get().atPointer?.[0]).toBe('150 m, bearing 090°');
});

test('without an aim nothing is left, and it is said what is missing', () => {
  const { running, written, said } = openReachInHand();
  running.finish?.();
  tap(running, 0, 0);
  running.finish?.();
  expect(written).toEqual([]);
  expect(said).toHaveLength(2);
});
