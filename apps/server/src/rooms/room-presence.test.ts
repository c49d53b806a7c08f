import { CLOSE_CODES, parsePresence } from '@loopwright/protocol';
import { expect, test } from 'vitest';
import { openTestRoom, type TestGuest } from '../testing/open-test-room.ts';

/** Everything a guest was told of others, as `client: state`. */
function told({ socket }: TestGuest) {
  return socket.kinds('presence').flatMap((frame) => {
    const entries = frame.kind === 'presence' ? parsePresence(frame.presence) : [];
    return 'kind' in entries ? [] : entries.map(({ client, state }) => ({ client, state }));
  });
}

test('P1: the others see a name and ink that the server knows, whatever the page says', () => {
  const { join } = openTestRoom();
  const [ada, grace] = [join('Ada'), join('Grace')];
  ada.present(7, { pointer: { x: 1, y: 2 }, name: 'Somebody else', ink: 5 });
  expect(told(grace)).toEqual([{ client: 7, state: { pointer: { x: 1, y: 2 }, name: 'Ada', ink: 2 } }]);
  expect(told(ada)).toEqual([]);
});

test('P2: nobody speaks for somebody else', () => {
  const { join } = openTestRoom();
  const [ada, grace, mallory] = [join('Ada'), join('Grace'), join('Mallory')];
  ada.present(7, { selection: [] });
  mallory.present(7, { selection: ['h1'] });
  ada.present(8, { selection: ['h2'] });
  expect(told(grace)).toEqual([{ client: 7, state: { selection: [], name: 'Ada', ink: 2 } }]);
});

test('whoever comes in later sees who is there', () => {
  const { join } = openTestRoom();
  join('Ada').present(7, { selection: [] });
  expect(told(join('Grace'))).toHaveLength(1);
});

test('P9: when a connection ends, the others are told', () => {
  const { join } = openTestRoom();
  const [ada, grace] = [join('Ada'), join('Grace')];
  ada.present(7, { selection: [] });
  ada.member.gone();
  expect(told(grace).at(-1)).toEqual({ client: 7, state: null });
});

test('a person who comes back before the lost connection is noticed is seen through the new one', () => {
  const { join } = openTestRoom();
  const [before, grace] = [join('Ada'), join('Grace')];
  before.present(7, { selection: ['h1'] }, 5);
  join('Ada').present(7, { selection: ['h2'] }, 5);
  before.member.gone();
  expect(told(grace).at(-1)?.state).toMatchObject({ selection: ['h2'] });
});

test('P6: presence after an edit waits until the edit is stored and told, or the drop would jump back', async () => {
  const { join, room } = openTestRoom();
  const [ada, grace] = [join('Ada'), join('Grace')];
  ada.step2(1);
  ada.present(7, { selection: ['h1'] });
  expect(told(grace)).toEqual([]);
  await room.idle();
  const kinds = grace.socket.frames().map(({ kind }) => kind);
  expect(kinds.slice(-2)).toEqual(['update', 'presence']);
});

test('P5: past the rate the newest word waits and is then said', () => {
  const { join, clock } = openTestRoom({ presenceBurst: 2, presencePerSecond: 10 });
  const [ada, grace] = [join('Ada'), join('Grace')];
  for (let x = 1; x <= 5; x++) ada.present(7, { pointer: { x, y: 0 } }, x);
  expect(told(grace)).toHaveLength(2);
  clock.pass(200);
  expect(told(grace).at(-1)?.state).toMatchObject({ pointer: { x: 5, y: 0 } });
  expect(told(grace)).toHaveLength(3);
});

test('P8: a slow reader gets no presence, and a reader too slow for anything is closed to come back', async () => {
  const { join, room } = openTestRoom({ bufferedBeforeDrop: 100, bufferedBeforeClose: 1000 });
  const [ada, slow] = [join('Ada'), join('Slow')];
  slow.socket.lagBy(200);
  ada.present(7, { selection: [] });
  expect(told(slow)).toEqual([]);
  ada.step2(1);
  await room.idle();
  expect(slow.socket.kinds('update')).toHaveLength(1);
  slow.socket.lagBy(2000);
  ada.present(7, { selection: ['h1'] }, 2);
  expect(slow.socket.closedWith()).toBe(CLOSE_CODES['slow-reader'].code);
});

test('in a large room the first word is passed on at once, and what follows within some milliseconds in one message', () => {
  const { join, clock } = openTestRoom({ largeRoom: 2, gather: 16 });
  const [ada, grace, viewer] = [join('Ada'), join('Grace'), join('Viewer')];
  ada.present(7, { pointer: { x: 0, y: 0 } }, 1);
  expect(told(viewer).map(({ client }) => client)).toEqual([7]);
  for (const guest of [ada, grace, viewer]) guest.socket.clear();
  ada.present(7, { pointer: { x: 1, y: 0 } }, 2);
  ada.present(7, { pointer: { x: 2, y: 0 } }, 3);
  grace.present(8, { pointer: { x: 3, y: 0 } });
  expect(told(viewer)).toEqual([]);
  clock.pass(16);
  expect(viewer.socket.kinds('presence')).toHaveLength(1);
  expect(told(viewer).map(({ client }) => client)).toEqual([7, 8]);
  expect(told(ada).map(({ client }) => client)).toEqual([8]);
});

test('P4: presence that is no JSON, or too large, is dropped whole', () => {
  const { join } = openTestRoom();
  const [ada, grace] = [join('Ada'), join('Grace')];
  ada.present(7, { selection: 'x'.repeat(5000) });
  expect(told(grace)).toEqual([]);
  expect(ada.socket.closedWith()).toBeUndefined();
});
