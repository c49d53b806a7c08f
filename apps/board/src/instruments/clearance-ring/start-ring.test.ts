import { expect, test } from 'vitest';
import { openSlot } from '../../live/slot.ts';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import { FIRST_RADIUS, startRing } from './start-ring.ts';

const at = (x: number, y: number) => ({ x, y });

function openRingInHand(parts: Parameters<typeof openFakeBench>[0] = {}) {
  const board = openFakeBench(parts);
  const radius = openSlot(FIRST_RADIUS);
  return { ...board, radius, running: startRing(board.bench, radius) };
}
type Running = ReturnType<typeof openRingInHand>['running'];
const tap = (running: Running, x: number, y: number) => running.press(mouseAt(x, y), undefined)?.end(mouseAt(x, y));
const ring = (about: object, radius = 30) => ({
  edit: 'add sketch',
  sketch: { shape: { kind: 'ring', radius, about } },
});

test('pressed on a green or a tee the ring is about it and follows it; elsewhere it is about the place', () => {
  const { running, written } = openRingInHand();
  tap(running, 4, 360); // on green 1, 30 m about whose middle was asked for
  tap(running, 3, 2);
  tap(running, 500, 500);
  expect(written).toMatchObject([
    ring({ routing: 'a', hole: 'h1', part: 'green' }),
    ring({ routing: 'a', hole: 'h1', part: 'tee:back' }),
    ring({ at: at(500, 500) }),
  ]);
  expect(new Set(written.map((edit) => edit.edit === 'add sketch' && edit.sketch.id)).size).toBe(3);
});

test('it is shown with its radius before it is put', () => {
  const { running } = openRingInHand();
  running.hover(mouseAt(0, 360));
  expect(running.picture.get()).toMatchObject({
    rings: [{ centre: at(0, 365.76), radius: 30 }],
    atPointer: ['30 m', 'about green 1, follows it'],
  });
});

test('a typed radius is in the unit that is read', () => {
  const { running, written, radius } = openRingInHand({ reading: { units: 'yards', teeSet: 'back' } });
  expect(running.enter?.('100 yd')).toBeUndefined();
  expect(radius.get()).toBe(91.44);
  tap(running, 500, 500);
  expect(written).toMatchObject([ring({ at: at(500, 500) }, 91.44)]);
  for (const wrong of ['', 'wide', '0', '-4', '1e9']) expect(running.enter?.(wrong)).toMatch(/Type a radius/);
  expect(radius.get()).toBe(91.44);
});

test('a finger carries the ring to where it is meant; a press that is taken away puts none', () => {
  const { running, written, shown } = openRingInHand();
  const press = running.press(mouseAt(500, 500), undefined);
  press?.move(mouseAt(0, 366));
  expect(shown()).toMatchObject(ring({ routing: 'a', hole: 'h1', part: 'green' }));
  press?.cancel();
  expect(shown()).toBeUndefined();
  expect(written).toEqual([]);
});
