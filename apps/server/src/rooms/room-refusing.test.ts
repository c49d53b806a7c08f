import { CLOSE_CODES, LIMITS } from '@loopwright/protocol';
import { expect, test } from 'vitest';
import { openTestRoom } from '../testing/open-test-room.ts';

test('X2: a reader may send what the room holds', async () => {
  const { join, room } = openTestRoom();
  join('Ada').step2(1);
  await room.idle();
  const client = join('Client', 'client');
  client.step2(1);
  await room.idle();
  expect(client.socket.kinds('committed')).toEqual([{ kind: 'committed', count: 1 }]);
});

test('X2, X4: a reader who sends something new is refused whole, by a code, and its local copy is retired', async () => {
  const { join, room, appended, raised } = openTestRoom();
  const client = join('Client', 'client');
  client.step2(1);
  client.update(2);
  await room.idle();
  expect(client.socket.frames().at(-1)).toEqual({ kind: 'refused', code: 'not-a-writer', frame: 1 });
  expect(client.socket.closedWith()).toBe(CLOSE_CODES['not-a-writer'].code);
  expect(appended).toEqual([]);
  expect(raised).toEqual(['m-Client']);
});

test('X4: after a refusal nothing of that connection is taken any more', async () => {
  const { join, room, appended } = openTestRoom();
  const ada = join('Ada');
  ada.step2(0);
  ada.update(1);
  await room.idle();
  ada.update(1);
  await room.idle();
  expect(appended).toEqual([]);
  expect(ada.socket.closedWith()).toBe(CLOSE_CODES.malformed.code);
});

test('F8: rubbish closes the one who sent it, and nobody else', () => {
  const { join } = openTestRoom();
  const [ada, grace] = [join('Ada'), join('Grace')];
  ada.member.receive(new Uint8Array([250, 250, 250]));
  expect(ada.socket.closedWith()).toBe(CLOSE_CODES.malformed.code);
  expect(grace.socket.closedWith()).toBeUndefined();
});

test('a page that sends far more than a person can is closed', () => {
  const { join } = openTestRoom({ frameBurst: 5 });
  const ada = join('Ada');
  for (let i = 0; i < 6; i++) ada.step1();
  expect(ada.socket.closedWith()).toBe(CLOSE_CODES['too-many-messages'].code);
});

test('F9: a frame longer than the protocol allows is refused in words, and the local copy with it is retired', () => {
  const { join, raised } = openTestRoom();
  const ada = join('Ada');
  ada.step2(1);
  ada.member.receive(new Uint8Array(LIMITS.mostFrameBytes + 1));
  expect(ada.socket.frames().at(-1)).toEqual({ kind: 'refused', code: 'too-large', frame: 2 });
  expect(ada.socket.closedWith()).toBe(CLOSE_CODES['too-large'].code);
  expect(raised).toEqual(['m-Ada']);
});

test('a flood of presence closes the one who sends it', () => {
  const { join } = openTestRoom({ presenceFrameBurst: 50 });
  const [ada, grace] = [join('Ada'), join('Grace')];
  for (let i = 0; i < 50; i++) ada.present(1, { selection: [] });
  expect(ada.socket.closedWith()).toBeUndefined();
  ada.present(1, { selection: [] });
  expect(ada.socket.closedWith()).toBe(CLOSE_CODES['too-many-messages'].code);
  expect(grace.socket.closedWith()).toBeUndefined();
});

test('J2: what is held before the first step 2 has a limit', () => {
  const { join } = openTestRoom({ stateBytes: 3 });
  const ada = join('Ada');
  for (const value of [1, 2, 3]) ada.update(value);
  expect(ada.socket.closedWith()).toBeUndefined();
  ada.update(4);
  expect(ada.socket.closedWith()).toBe(CLOSE_CODES['too-many-messages'].code);
});

test('a full room says so', () => {
  const { join } = openTestRoom({ connectionsPerBoard: 1 });
  join('Ada');
  expect(() => join('Grace')).toThrow('full');
});

test('a withdrawn link closes those who came by it, for good', () => {
  const { join, room } = openTestRoom();
  const [ada, client] = [join('Ada'), join('Client', 'client')];
  room.closeLink('l-client', 'link-revoked');
  expect(client.socket.closedWith()).toBe(CLOSE_CODES['link-revoked'].code);
  expect(ada.socket.closedWith()).toBeUndefined();
});

test('a link that ends while the page is open closes it at the next heartbeat', () => {
  const { join, room, clock } = openTestRoom();
  const ada = join('Ada', 'designer', clock.now() + 1000);
  room.beat();
  expect(ada.socket.closedWith()).toBeUndefined();
  clock.pass(1000);
  room.beat();
  expect(ada.socket.closedWith()).toBe(CLOSE_CODES['link-revoked'].code);
});

test('a connection that gives no sign of life for three heartbeats is dropped', () => {
  const { join, room, clock } = openTestRoom({ heartbeat: 1000 });
  const [ada, grace] = [join('Ada'), join('Grace')];
  clock.pass(3001);
  grace.member.heard();
  room.beat();
  expect(ada.socket.isDropped()).toBe(true);
  expect(grace.socket.isDropped()).toBe(false);
});
