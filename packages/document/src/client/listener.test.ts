import fc from 'fast-check';
import { expect, test } from 'vitest';
import { handClock } from '../fixtures/hand-clock.ts';
import { openListener } from './listener.ts';

const drag = { edit: 'move part', routing: 'a', hole: 'h1', part: 'green', to: { x: 1, y: 2 } } as const;
const word = { name: 'Ada', ink: 3, selection: ['h1'], routing: 'a', pointer: { x: 1, y: 2 } };

const opened = () => {
  const clock = handClock();
  let changes = 0;
  const listener = openListener(clock, () => {
    changes += 1;
  });
  return { clock, listener, changes: () => changes };
};

test('somebody shows as the server signed them', () => {
  const { listener } = opened();
  listener.hear(7, { ...word, drag });
  expect(listener.others()).toEqual([{ ...word, client: 7, drag }]);
});

test('P7: a drag whose ticks stopped for 3 s is left out, the person is not', () => {
  const { clock, listener, changes } = opened();
  listener.hear(7, { ...word, drag });
  clock.move(2900);
  listener.hear(7, { ...word, drag });
  clock.move(2900);
  expect(listener.others()[0]?.drag).toEqual(drag);
  const before = changes();
  clock.move(200);
  expect(listener.others()).toEqual([{ ...word, client: 7 }]);
  expect(changes()).toBe(before + 1);
  listener.hear(7, { ...word, drag });
  expect(listener.others()[0]?.drag).toEqual(drag);
});

test('a repeated word changes nothing, and a drag keeps its identity while the pointer moves', () => {
  const { listener, changes } = opened();
  listener.hear(7, { ...word, drag });
  const before = listener.others();
  listener.hear(7, structuredClone({ ...word, drag }));
  expect(listener.others()).toBe(before);
  expect(changes()).toBe(1);
  listener.hear(7, structuredClone({ ...word, pointer: { x: 9, y: 9 }, drag }));
  expect(listener.others()[0]?.drag).toBe(before[0]?.drag);
});

test('whoever leaves is gone', () => {
  const { listener } = opened();
  listener.hear(7, word);
  listener.left(7);
  expect(listener.others()).toEqual([]);
});

test('rubbish parts of a word are left out; a word without the server’s name is nobody', () => {
  const { listener } = opened();
  listener.hear(7, { ...word, pointer: { x: 1e308, y: 'left' }, selection: 'all', drag: { edit: 'format disk' } });
  expect(listener.others()).toEqual([{ name: 'Ada', ink: 3, client: 7, routing: 'a', selection: [] }]);
  listener.hear(7, { pointer: { x: 1, y: 2 } });
  expect(listener.others()).toEqual([]);
});

test('a whole plan is never taken for a drag', () => {
  const { listener } = opened();
  listener.hear(7, { ...word, drag: { edit: 'lay out plan', plan: {} } });
  expect(listener.others()[0]?.drag).toBeUndefined();
});

test('any word is somebody or nobody, and never throws', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.jsonValue(), (state, held) => {
      const { listener } = opened();
      listener.hear(1, state);
      listener.hear(2, { ...word, drag: held });
      expect(listener.others().length).toBeGreaterThan(0);
      listener.close();
    }),
  );
});
