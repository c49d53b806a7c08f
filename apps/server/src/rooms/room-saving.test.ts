import { CLOSE_CODES } from '@loopwright/protocol';
import { expect, test } from 'vitest';
import { openTestRoom } from '../testing/open-test-room.ts';

const update = (...bytes: number[]) => ({ kind: 'update', update: new Uint8Array(bytes) });
const committed = (count: number) => ({ kind: 'committed', count });

test('J1: whoever comes in is told at once what the room holds', () => {
  const { join } = openTestRoom();
  expect(join('Ada').socket.frames()).toEqual([{ kind: 'step 1', vector: new Uint8Array([0]) }]);
});

test('S2: an edit is stored, then acknowledged, then shown to the others, and not to its sender', async () => {
  const { join, room, appended } = openTestRoom();
  const [ada, grace] = [join('Ada'), join('Grace')];
  ada.step2(1);
  expect(ada.socket.kinds('committed')).toEqual([]);
  await room.idle();
  expect(appended).toEqual([[1]]);
  expect(ada.socket.kinds('committed')).toEqual([committed(1)]);
  expect(ada.socket.kinds('update')).toEqual([]);
  expect(grace.socket.kinds('update')).toEqual([update(1)]);
});

test('J2: updates before the first step 2 wait for it', async () => {
  const { join, room, appended } = openTestRoom();
  const ada = join('Ada');
  ada.update(2);
  await room.idle();
  expect(appended).toEqual([]);
  ada.step2(1);
  await room.idle();
  expect(appended).toEqual([[1], [2]]);
  expect(ada.socket.kinds('committed').at(-1)).toEqual(committed(2));
});

test('S3: what the room already holds is acknowledged and goes no further', async () => {
  const { join, room, appended } = openTestRoom();
  const [ada, grace] = [join('Ada'), join('Grace')];
  ada.step2(1);
  await room.idle();
  grace.socket.clear();
  grace.step2(1);
  await room.idle();
  expect(appended).toEqual([[1]]);
  expect(grace.socket.frames()).toEqual([committed(1)]);
});

test('S4: a gap is answered by a fresh step 1, and counts once a later step 2 has filled it', async () => {
  const { join, room } = openTestRoom();
  const ada = join('Ada');
  ada.step2(1);
  await room.idle();
  ada.socket.clear();
  ada.update(3);
  ada.update(1);
  await room.idle();
  expect(ada.socket.frames()).toEqual([{ kind: 'step 1', vector: new Uint8Array([1]) }, committed(1)]);
  ada.step2(2);
  await room.idle();
  expect(ada.socket.kinds('committed').at(-1)).toEqual(committed(4));
});

test('a page whose gap never closes is closed in the end', async () => {
  const { join, room } = openTestRoom();
  const ada = join('Ada');
  for (let i = 0; i < 10; i++) ada.step2(9);
  await room.idle();
  expect(ada.socket.closedWith()).toBe(CLOSE_CODES['edit-refused'].code);
});

test('edits of several people go into one commit', async () => {
  const { join, room, appended } = openTestRoom();
  const [ada, grace] = [join('Ada'), join('Grace')];
  ada.step2(1);
  grace.step2(1);
  await room.idle();
  expect(appended).toEqual([[1, 1]]);
});

test('S5: the durable count is repeated with every heartbeat', async () => {
  const { join, room } = openTestRoom();
  const ada = join('Ada');
  ada.step2(1);
  await room.idle();
  ada.socket.clear();
  room.beat();
  expect(ada.socket.frames()).toEqual([committed(1)]);
  expect(ada.socket.pings()).toBe(1);
});

test('S7: when the disk is full nothing is acknowledged, applied or shown, and the page is sent to try again', async () => {
  const { join, room, document, fill, log } = openTestRoom();
  const [ada, grace] = [join('Ada'), join('Grace')];
  fill('full');
  ada.step2(1);
  ada.update(2);
  await room.idle();
  expect(ada.socket.closedWith()).toBe(CLOSE_CODES['not-saved'].code);
  expect(ada.socket.kinds('committed')).toEqual([]);
  expect(grace.socket.kinds('update')).toEqual([]);
  expect(grace.socket.closedWith()).toBeUndefined();
  expect(document.held).toEqual([]);
  expect(room.refusing()).toBe(true);
  expect(log.events).toEqual(['commit-failed']);

  fill('free');
  const again = join('Ada');
  again.step2(1);
  await room.idle();
  expect(again.socket.kinds('committed')).toEqual([committed(1)]);
  expect(grace.socket.kinds('update')).toEqual([update(1)]);
  expect(room.refusing()).toBe(false);
});

test('an edit on its way when the connection is lost still goes in', async () => {
  const { join, room, appended, emptied } = openTestRoom();
  const ada = join('Ada');
  ada.step2(1);
  ada.member.gone();
  await room.idle();
  expect(appended).toEqual([[1]]);
  expect(emptied()).toBe(1);
});
