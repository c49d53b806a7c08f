import { encodePresence, parsePresence } from '@loopwright/protocol';
import { expect, test } from 'vitest';
import type { PresenceState } from '../contract.ts';
import { fitting } from './fitting.ts';

/** A pencil stroke of so many points, with a note, as it is drawn. */
const drawing = (points: number, note = ''): PresenceState => ({
  pointer: { x: 1, y: 2 },
  selection: ['h1'],
  drag: {
    edit: 'add sketch',
    sketch: {
      id: 'k1',
      shape: { kind: 'stroke', points: Array.from({ length: points }, (_, x) => ({ x: x + 100.125, y: x + 200.125 })) },
      ...{ by: 'Ann', ink: 1, kept: false, note },
    },
  },
});
const NAME = '😀'.repeat(60);

test('P4: a stroke that fits is shown while it is drawn; with it all that is said is taken by the server', () => {
  const state = drawing(100);
  expect(fitting(state)).toBe(state);
  const stamped = { ...state, name: NAME, ink: 7 };
  expect(parsePresence(encodePresence([{ client: 1, clock: 1, state: stamped }]))).toHaveLength(1);
});

test.each([drawing(500), drawing(1, '球'.repeat(2000))])(
  'a drag that would not fit is left out, and the pointer is still seen',
  (state) => {
    expect(fitting(state)).toEqual({ pointer: { x: 1, y: 2 }, selection: ['h1'] });
  },
);
