import { beforeEach, expect, test } from 'vitest';
import { openSqliteStore } from '../storage/sqlite.ts';
import type { Role, Store } from '../storage/store.ts';
import { type HandClock, handClock } from '../testing/hand-clock.ts';
import { knownChance } from '../testing/known-chance.ts';
import { type Access, type EnterResult, openAccess } from './access.ts';

const BOARD = 'b1';
let store: Store;
let clock: HandClock;
let access: Access;
let secret: string;
let link: string;

beforeEach(async () => {
  store = await openSqliteStore(':memory:');
  clock = handClock();
  access = openAccess({ store, clock, chance: knownChance() });
  const made = access.makeLink(BOARD, 'designer');
  secret = made.secret;
  link = made.link.id;
  await store.addBoard({ id: BOARD, name: 'North links', createdAt: clock.now() }, made.link, new Uint8Array([0, 0]));
});

const enter = (with_: Partial<Parameters<Access['enter']>[0]> = {}) =>
  access.enter({ board: BOARD, secret, name: 'Ada', held: [], ...with_ });

function entered(result: EnterResult) {
  if (result.kind !== 'entered') throw new Error(`not let in: ${result.why}`);
  return result;
}

const heldFrom = (result: EnterResult) => {
  const { membership, token = '' } = entered(result);
  return [{ membership: membership.id, token }];
};

async function linkFor(role: Role, endsAt?: number) {
  const made = access.makeLink(BOARD, role, endsAt);
  await store.addLink(made.link);
  return made.secret;
}

test('a link lets in, and only the hash of its secret is stored', async () => {
  const { membership, role } = entered(await enter());
  expect(membership).toMatchObject({ board: BOARD, name: 'Ada', ink: 0, epoch: 1 });
  expect(role).toBe('designer');
  expect((await store.link(link))?.secretHash).not.toContain(secret);
});

test.each([
  ['an unknown board', { board: 'b9' }, 'no-such-board'],
  ['a wrong secret', { secret: 'guess' }, 'wrong-link'],
  ['no secret and no cookie', { secret: '' }, 'wrong-link'],
])('%s lets nobody in', async (_what, change, why) => {
  expect(await enter(change)).toEqual({ kind: 'refused', why });
});

test('a revoked link lets nobody in, nor those who came by it', async () => {
  const [held] = heldFrom(await enter());
  await store.revokeLink(link);
  expect(await enter()).toEqual({ kind: 'refused', why: 'link-revoked' });
  if (held) expect(await access.admit(BOARD, held)).toEqual({ kind: 'refused', why: 'link-revoked' });
});

test('a link with an end opens until then', async () => {
  const ending = await linkFor('designer', clock.now() + 1000);
  expect((await enter({ secret: ending })).kind).toBe('entered');
  clock.pass(1000);
  expect(await enter({ secret: ending })).toEqual({ kind: 'refused', why: 'link-ended' });
});

test('the same link in the same browser finds the same person, under the same name or none', async () => {
  const first = await enter();
  for (const name of ['Ada', '']) {
    const again = entered(await enter({ name, held: heldFrom(first) }));
    expect(again.membership.id).toBe(entered(first).membership.id);
    expect(again.token).toBeUndefined();
  }
});

test('another name in the same browser is another person with another ink', async () => {
  const first = await enter();
  const { membership } = entered(await enter({ name: 'Grace', held: heldFrom(first) }));
  expect(membership).toMatchObject({ name: 'Grace', ink: 1 });
  expect(membership.id).not.toBe(entered(first).membership.id);
});

test("opening a viewer's link does not demote the designer's tab", async () => {
  const designer = await enter();
  const viewer = entered(await enter({ secret: await linkFor('viewer'), held: heldFrom(designer) }));
  expect(viewer.role).toBe('viewer');
  const [held] = heldFrom(designer);
  if (held) expect(await access.admit(BOARD, held)).toMatchObject({ kind: 'admitted', role: 'designer' });
});

test('a cookie proves one membership on one board, by its own token', async () => {
  const [held] = heldFrom(await enter());
  if (!held) throw new Error('a new membership comes with a token');
  expect((await access.admit(BOARD, held)).kind).toBe('admitted');
  expect((await access.admit('b2', held)).kind).toBe('refused');
  expect((await access.admit(BOARD, { ...held, token: 'guess' })).kind).toBe('refused');
  expect((await access.admit(BOARD, { ...held, membership: 'm9' })).kind).toBe('refused');
});
