import { expect, test } from 'vitest';
import { at, hole, openHand } from './one-hole.test-hand.ts';
import { beginGesture } from './tools.ts';

const second = { ...hole, id: 'h2', pinned: [] };
const both = { holes: [{ ...hole, pinned: [] }, second] };
const two = { hole: 'h2', also: ['h1'] };
const number = { kind: 'number', hole: 'h1' } as const;

test('Shift or Ctrl picks a further hole out, and lets it go again', () => {
  const { hand, did } = openHand(both, { hole: 'h2' });
  beginGesture(number, at(0, 150, { shift: true }), hand)?.end(at(0, 150, { shift: true }));
  const again = openHand(both, two);
  beginGesture(number, at(0, 150, { adds: true }), again.hand)?.end(at(0, 150, { adds: true }));
  expect([did, again.did]).toEqual([[{ hole: 'h1', also: ['h2'] }], [{ hole: 'h2' }]]);
});

test('one of several dragged moves all of them in one edit, whatever of it was taken hold of', () => {
  const green = { kind: 'part', hole: 'h1', part: 'green', at: { x: 0, y: 300 } } as const;
  for (const hit of [number, green]) {
    const { hand, did } = openHand(both, two);
    const gesture = beginGesture(hit, at(0, 150), hand);
    gesture?.move(at(12, 145));
    gesture?.end(at(12, 145));
    expect(did).toEqual([{ edit: 'move holes', routing: 'r1', holes: ['h1', 'h2'], by: { x: 12, y: -5 } }, 'drop']);
  }
});

test('a hole that is not among those picked out moves alone', () => {
  const { hand, did } = openHand({ holes: [...both.holes, { ...second, id: 'h3' }] }, two);
  const gesture = beginGesture({ kind: 'number', hole: 'h3' }, at(0, 150), hand);
  gesture?.move(at(12, 150));
  expect(did).toEqual([{ hole: 'h3' }, expect.objectContaining({ edit: 'move hole', hole: 'h3' })]);
});

test('a pinned part of any of them asks before all are moved', () => {
  const { hand, did } = openHand({ holes: [hole, { ...second, pinned: ['tee:back'] }] }, two);
  const gesture = beginGesture(number, at(0, 150), hand);
  gesture?.move(at(12, 150));
  gesture?.end(at(12, 150));
  expect(did).toEqual([{ pinned: ['green'], further: [{ hole: 'h2', parts: ['tee:back'] }] }]);
});

test('a frame drawn over paper with Shift picks out the holes in it; cancelled it picks out none', () => {
  const { hand, did } = openHand(both);
  const gesture = beginGesture(undefined, at(-50, -50, { shift: true }), hand);
  gesture?.move(at(60, 320));
  gesture?.end(at(60, 320));
  expect(did.at(-1)).toEqual({ hole: 'h2', also: ['h1'] });
  const other = openHand(both);
  const cancelled = beginGesture(undefined, at(-50, -50, { shift: true }), other.hand);
  cancelled?.move(at(60, 320));
  cancelled?.cancel();
  expect(other.did.at(-1)).toEqual({ frame: undefined });
});

test('a press on paper with Shift leaves what is picked out', () => {
  const { hand, did } = openHand(both, two);
  beginGesture(undefined, at(0, 0, { shift: true }), hand)?.end(at(0, 0, { shift: true }));
  expect(did.filter((each) => typeof each === 'object' && each !== null && 'hole' in each)).toEqual([]);
});
