import fc from 'fast-check';
import { expect, test } from 'vitest';
import { encodePresence, parsePresence } from './presence.ts';

test('entries come back as they were said (F4)', () => {
  const entries = [
    { client: 12, clock: 3, state: { pointer: { x: 1, y: 2 } } },
    { client: 4_294_967_295, clock: 0, state: null },
  ];
  expect(parsePresence(encodePresence(entries))).toEqual(entries);
});

test('presence above 4096 bytes is malformed (P4)', () => {
  const payload = encodePresence([{ client: 1, clock: 1, state: 'x'.repeat(5000) }]);
  expect(parsePresence(payload)).toMatchObject({ kind: 'malformed' });
});

test('any bytes are entries or malformed, and never throw (F8)', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 120 }), (payload) => {
      expect(parsePresence(payload)).toBeDefined();
    }),
    { numRuns: 1000 },
  );
});
