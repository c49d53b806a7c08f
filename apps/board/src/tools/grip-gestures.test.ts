import type { Hole } from '@loopwright/model';
import { expect, test } from 'vitest';
import type { Grip } from './grip.ts';
import { at, hole, openHand } from './one-hole.test-hand.ts';
import { beginGesture } from './tools.ts';

const of = { routing: 'r1', hole: 'h1' };
const free: Hole = { ...hole, pinned: [] };

/** Drags a grip from where it lies by so much. */
function drag(grip: Grip, x: number, y: number, on: Hole = free, locked = false) {
  const { hand, did } = openHand({ holes: [on], locked });
  const gesture = beginGesture({ kind: 'grip', hole: 'h1', grip }, at(grip.at.x, grip.at.y), hand);
  gesture?.move(at(grip.at.x + x, grip.at.y + y));
  gesture?.end(at(grip.at.x + x, grip.at.y + y));
  return did;
}

test('the grip of a leg puts one turn point in, written once', () => {
  const turn = { ...of, edit: 'add turn point', turn: 't9', place: 0 };
  expect(drag({ kind: 'leg', at: { x: 0, y: 150 }, place: 0 }, 40, 0)).toEqual([
    { ...turn, at: { x: 40, y: 150 } },
    'drop',
  ]);
});

test('the grip beyond a tee slides along the line only', () => {
  const grip: Grip = { kind: 'beyond', at: { x: 0, y: -30 }, end: 'tee:back', out: { x: 0, y: -1 } };
  expect(drag(grip, 55, -12)).toEqual([{ ...of, edit: 'lengthen', end: 'tee:back', by: 12 }, 'drop']);
  expect(drag(grip, 55, 7)).toEqual([{ ...of, edit: 'lengthen', end: 'tee:back', by: -7 }, 'drop']);
});

test('sliding across the line lengthens nothing and writes nothing', () => {
  expect(drag({ kind: 'beyond', at: { x: 0, y: -30 }, end: 'tee:back', out: { x: 0, y: -1 } }, 40, 0)).toEqual([
    'let go',
  ]);
});

test('a pinned green asks before it is lengthened or shaped', () => {
  const beyond: Grip = { kind: 'beyond', at: { x: 0, y: 340 }, end: 'green', out: { x: 0, y: 1 } };
  const width: Grip = { kind: 'green width', at: { x: 10, y: 300 }, out: { x: 1, y: 0 } };
  for (const grip of [beyond, width]) expect(drag(grip, 5, 5, hole)).toEqual([{ pinned: ['green'] }]);
});

test('a handle on the edge of the green takes both edges with it: the centre stays', () => {
  const shape = { length: 30, width: 28, bearing: 0 };
  expect(drag({ kind: 'green width', at: { x: 10, y: 300 }, out: { x: 1, y: 0 } }, 4, 9)).toEqual([
    { ...of, edit: 'shape green', shape },
    'drop',
  ]);
});

test('the handle outside the green turns it: from south to west is a quarter turn', () => {
  const did = drag({ kind: 'green bearing', at: { x: 0, y: 270 } }, -30, 30);
  expect(did).toMatchObject([{ edit: 'shape green', shape: { length: 30, width: 20 } }, 'drop']);
  const [first] = did;
  if (typeof first !== 'object' || first === null || !('shape' in first)) throw new Error('no shape');
  expect(first.shape).toMatchObject({ bearing: expect.closeTo(Math.PI / 2, 5) });
});

test('a walk is led around: a point put in, moved, taken out', () => {
  const led: Hole = { ...free, waypoints: [{ x: 20, y: 310 }] };
  const way = { ...of, edit: 'set waypoints' };
  expect(drag({ kind: 'walk leg', at: { x: 40, y: 320 }, index: 1 }, 5, 5, led)[0]).toEqual({
    ...way,
    waypoints: [
      { x: 20, y: 310 },
      { x: 45, y: 325 },
    ],
  });
  const point: Grip = { kind: 'waypoint', at: { x: 20, y: 310 }, index: 0 };
  expect(drag(point, 10, 0, led)[0]).toEqual({ ...way, waypoints: [{ x: 30, y: 310 }] });
  const { hand, did } = openHand({ holes: [led] });
  beginGesture({ kind: 'grip', hole: 'h1', grip: point }, at(20, 310), hand)?.end(at(20, 310, { alt: true }));
  expect(did).toEqual([{ wrote: { ...way, waypoints: [] } }]);
});

test('on a locked routing grips only say so', () => {
  expect(drag({ kind: 'leg', at: { x: 0, y: 150 }, place: 0 }, 40, 0, free, true)).toEqual(['locked']);
});

test('a press with Alt takes a turn point out', () => {
  const bent: Hole = { ...free, turnPoints: [{ id: 't1', at: { x: 40, y: 150 } }] };
  const { hand, did } = openHand({ holes: [bent] });
  const hit = { kind: 'part', hole: 'h1', part: 'turn:t1', at: { x: 40, y: 150 } } as const;
  beginGesture(hit, at(40, 150), hand)?.end(at(40, 150, { alt: true }));
  expect(did).toEqual([{ wrote: { ...of, edit: 'remove turn point', turn: 't1' } }]);
});

test('a tee dropped on its green is put back, with a word', () => {
  const { hand, did } = openHand({ holes: [free] });
  const gesture = beginGesture({ kind: 'part', hole: 'h1', part: 'tee:back', at: { x: 0, y: 0 } }, at(0, 0), hand);
  gesture?.move(at(0, 300));
  gesture?.end(at(0, 300));
  expect(did.slice(-2)).toEqual(['let go', { said: expect.stringMatching(/needs some length/) }]);
});
