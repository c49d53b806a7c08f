import fc from 'fast-check';
import { expect, test } from 'vitest';
import { encodeFrame, type Frame, parseFrame } from './frames.ts';
import { LIMITS } from './limits.ts';
import { REFUSAL_CODES } from './refusals.ts';

const bytes = fc.uint8Array({ maxLength: 40 });
const frames: fc.Arbitrary<Frame> = fc.oneof(
  bytes.map((vector): Frame => ({ kind: 'step 1', vector })),
  bytes.map((update): Frame => ({ kind: 'step 2', update })),
  bytes.map((update): Frame => ({ kind: 'update', update })),
  bytes.map((presence): Frame => ({ kind: 'presence', presence })),
  fc.constant<Frame>({ kind: 'ask presence' }),
  fc.string().map((reason): Frame => ({ kind: 'denied', reason })),
  fc.nat().map((count): Frame => ({ kind: 'committed', count })),
  fc
    .tuple(fc.constantFrom(...REFUSAL_CODES), fc.nat())
    .map(([code, frame]): Frame => ({ kind: 'refused', code, frame })),
);

test('every frame comes back as it was sent (F1–F7)', () => {
  fc.assert(
    fc.property(frames, (frame) => {
      expect(parseFrame(encodeFrame(frame))).toEqual(frame);
    }),
  );
});

// Truth: y-protocols/PROTOCOL.md and y-websocket 3.1 (message types 0 sync, 1 awareness, 2 auth, 3 query awareness).
test.each([
  { wire: [0, 0, 1, 7], kind: 'step 1' },
  { wire: [0, 1, 2, 0, 0], kind: 'step 2' },
  { wire: [0, 2, 2, 0, 0], kind: 'update' },
  { wire: [1, 1, 0], kind: 'presence' },
  { wire: [2, 0, 2, 110, 111], kind: 'denied' },
  { wire: [3], kind: 'ask presence' },
])('the bytes $wire are a $kind, as y-websocket writes them', ({ wire, kind }) => {
  expect(parseFrame(Uint8Array.from(wire)).kind).toBe(kind);
});

test('any bytes are a frame or malformed, and never throw (F8)', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), (wire) => {
      expect(typeof parseFrame(wire).kind).toBe('string');
    }),
    { numRuns: 2000 },
  );
});

test.each([
  { why: 'nothing at all', wire: [] },
  { why: 'an unknown type', wire: [77] },
  { why: 'an unknown sync message', wire: [0, 9, 0] },
  { why: 'a payload cut short', wire: [0, 2, 200, 1, 5] },
  { why: 'bytes left over', wire: [3, 0] },
  { why: 'a number that never ends', wire: [100, 255, 255, 255, 255, 255, 255, 255, 255, 255, 255] },
  { why: 'an unknown refusal', wire: [101, 1, 120, 0] },
])('$why is malformed (F8)', ({ wire }) => {
  expect(parseFrame(Uint8Array.from(wire)).kind).toBe('malformed');
});

test('a frame above the limit is malformed before it is read (F8)', () => {
  expect(parseFrame(new Uint8Array(LIMITS.mostFrameBytes + 1)).kind).toBe('malformed');
});
