import { encodeFrame, encodePresence, LIMITS, parseFrame, parsePresence } from '@loopwright/protocol';
import { expect, test } from 'vitest';
import { sortOutgoing } from './plan-socket.ts';

const presenceOf = (...clients: number[]) =>
  encodeFrame({
    kind: 'presence',
    presence: encodePresence(clients.map((client) => ({ client, clock: 1, state: { client } }))),
  });

test('P3: other people’s presence is taken out on the way out', () => {
  const outgoing = sortOutgoing(presenceOf(1, 2, 3), 2);
  if (outgoing.kind === 'dropped') throw new Error('one’s own was dropped too');
  const frame = parseFrame(outgoing.frame);
  if (frame.kind !== 'presence') throw new Error('no presence');
  expect(parsePresence(frame.presence)).toEqual([{ client: 2, clock: 1, state: { client: 2 } }]);
});

test('P3: presence of others alone is not sent at all', () => {
  expect(sortOutgoing(presenceOf(1, 3), 2)).toEqual({ kind: 'dropped' });
});

test('S1: step 2 and updates are counted, step 1 is not', () => {
  const bytes = new Uint8Array([0, 0]);
  expect(sortOutgoing(encodeFrame({ kind: 'step 2', update: bytes }), 2).kind).toBe('counted');
  expect(sortOutgoing(encodeFrame({ kind: 'update', update: bytes }), 2).kind).toBe('counted');
  expect(sortOutgoing(encodeFrame({ kind: 'step 1', vector: bytes }), 2).kind).toBe('plain');
});

test('S1: an update longer than the server takes is counted too, or the page would not know that it waits', () => {
  const update = new Uint8Array(LIMITS.mostFrameBytes + 1);
  expect(sortOutgoing(encodeFrame({ kind: 'update', update }), 2).kind).toBe('counted');
});
