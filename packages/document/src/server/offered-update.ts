import { LIMITS } from '@loopwright/protocol';
import * as Y from 'yjs';
import { isSameValue, plainSize } from '../plain-value.ts';
import { isRoot, placeOf } from '../roots.ts';
import type { Offer, RoomRules } from './contract.ts';

/** An update taken apart, without applying it. */
export type OfferedUpdate = ReturnType<typeof Y.decodeUpdate>;

type Flaw = Extract<Offer, { kind: 'refused' }>['code'];

const VALUE_LIMITS = { mostDepth: LIMITS.mostValueDepth, mostBytes: LIMITS.mostValueBytes };

/** Untrusted bytes as an update; `undefined` when they are none, or are followed by something else. */
export function parseUpdate(bytes: Uint8Array): OfferedUpdate | undefined {
  try {
    return Y.decodeUpdate(bytes);
  } catch (error) {
    if (error instanceof Error) return undefined; // every way the decoder has of saying that it ran out of sense
    throw error;
  }
}

/**
 * Whether a document holds all of an update: every struct, and every deletion. An update that changes nothing need not
 * be empty: a clean reader's first answer carries the whole delete set.
 */
export function isContained(doc: Y.Doc, { structs, ds }: OfferedUpdate): boolean {
  for (const struct of structs) {
    if (struct instanceof Y.Skip) continue;
    if (struct.id.clock + struct.length > Y.getState(doc.store, struct.id.client)) return false;
  }
  for (const [client, ranges] of ds.clients) {
    if (!ranges.every(({ clock, len }) => isDeletedIn(doc, client, clock, clock + len))) return false;
  }
  return true;
}

/**
 * Whether an update says something else under the same numbers as the document: two pages took the same client number,
 * or somebody wrote under another's. It must not pass for known: the page would be told that its change is saved.
 *
 * A value that has been overwritten since is gone, and cannot be compared.
 *
 * Cost: O(structs × log(structs held of the same client)).
 */
export function contradicts(doc: Y.Doc, { structs }: OfferedUpdate): boolean {
  return structs.some((struct) => {
    if (!(struct instanceof Y.Item) || !(struct.content instanceof Y.ContentAny)) return false;
    const { client, clock } = struct.id;
    const held = clock < Y.getState(doc.store, client) ? Y.getItem(doc.store, struct.id) : undefined;
    if (!(held instanceof Y.Item) || !(held.content instanceof Y.ContentAny)) return false;
    return !isSameValue(held.content.arr[clock - held.id.clock], struct.content.arr[0]);
  });
}

function isDeletedIn(doc: Y.Doc, client: number, from: number, to: number): boolean {
  if (from >= to) return true;
  const structs = doc.store.clients.get(client);
  if (structs === undefined || to > Y.getState(doc.store, client)) return false;
  for (let index = Y.findIndexSS(structs, from); index < structs.length; index++) {
    const struct = structs[index];
    if (struct === undefined || struct.id.clock >= to) return true;
    if (!struct.deleted) return false;
  }
  return true;
}

/** Whether an update builds on something that neither the document nor the update itself holds. */
export function isEarly(doc: Y.Doc, { structs, ds }: OfferedUpdate): boolean {
  const ends = new Map<number, number>();
  const endOf = (client: number) => ends.get(client) ?? Y.getState(doc.store, client);
  for (const struct of structs) {
    const { client, clock } = struct.id;
    if (struct instanceof Y.Skip || clock > endOf(client)) return true;
    ends.set(client, Math.max(endOf(client), clock + struct.length));
  }
  const isMissing = (id: Y.ID | null) => id !== null && id.clock >= endOf(id.client);
  for (const struct of structs) {
    if (struct instanceof Y.Item && (isMissing(struct.origin) || isMissing(struct.rightOrigin))) return true;
  }
  for (const [client, ranges] of ds.clients) {
    if (ranges.some(({ clock, len }) => clock + len > endOf(client))) return true;
  }
  return false;
}

/**
 * Values in one update that are written over the same value, or start the same key: as many as people can be on a board.
 *
 * The library looks at each of them for each, so that 40,000 in one update of 1 MB would hold the server up for minutes.
 */
const MOST_RIVALS = 500;

/** Where an item stands before its rivals are told apart: right after a value, or first under its key. */
function standOf({ origin, parent, parentSub }: Y.Item): string {
  return origin === null ? `${parent}/${parentSub}` : `${origin.client}:${origin.clock}`;
}

/** The first rule of structure that an update breaks, looking at the update alone. */
export function flawOf({ structs }: OfferedUpdate, rules: RoomRules): Flaw | undefined {
  const rivals = new Map<string, number>();
  for (const struct of structs) {
    if (struct instanceof Y.Skip) continue;
    if (!(struct instanceof Y.Item) || struct.length === 0) return 'malformed';
    const stand = standOf(struct);
    const count = (rivals.get(stand) ?? 0) + 1;
    if (count > MOST_RIVALS) return 'malformed';
    rivals.set(stand, count);
    const flaw = flawOfPlace(struct, rules) ?? flawOfContent(struct.content);
    if (flaw !== undefined) return flaw;
  }
  return undefined;
}

/** Where an item goes. One that follows another goes where that one is, which was looked at when that one came. */
function flawOfPlace(item: Y.Item, rules: RoomRules): Flaw | undefined {
  if (item.origin !== null || item.rightOrigin !== null) return undefined;
  const root: unknown = item.parent; // not yet resolved: a collection's name, or the id of a type nested in a value
  if (typeof root !== 'string') return 'bad-value';
  if (rules.room !== 'plan' || !isRoot(root)) return 'unknown-root';
  const key = item.parentSub;
  if (key === null || key.length > LIMITS.mostKeyLetters || placeOf(root, key) === undefined) return 'bad-key';
  return undefined;
}

function flawOfContent(content: Y.Item['content']): Flaw | undefined {
  if (content instanceof Y.ContentDeleted) return undefined; // a value that was overwritten since
  if (!(content instanceof Y.ContentAny) || content.arr.length !== 1) return 'bad-value';
  const [value] = content.arr;
  if (plainSize(value, VALUE_LIMITS) !== undefined) return undefined;
  const unbounded = { mostDepth: LIMITS.mostValueDepth, mostBytes: Number.MAX_SAFE_INTEGER };
  return plainSize(value, unbounded) === undefined ? 'bad-value' : 'too-large';
}
