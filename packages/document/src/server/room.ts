import * as Y from 'yjs';
import type { Offer, Rights, RoomDocument, RoomRules } from './contract.ts';
import { contradicts, flawOf, isContained, isEarly, parseUpdate } from './offered-update.ts';
import { newDoc, openTrial } from './trial.ts';

/**
 * Opens a room's document: empty, or from stored bytes.
 *
 * `offer` looks at an update without applying it; the server stores what is new and then calls `apply`. Untrusted bytes
 * never throw and never change anything.
 *
 * @throws Error if the stored bytes are not a document: the store is broken
 */
export function openRoom(rules: RoomRules, state?: Uint8Array): RoomDocument {
  const doc = newDoc();
  if (state) Y.applyUpdate(doc, state);
  const trial = openTrial(doc);
  const size = openSizeWatch(doc, state?.length ?? 0, rules.mostStateBytes);

  return {
    vector: () => Y.encodeStateVector(doc),
    missing(vector) {
      return Y.encodeStateAsUpdate(doc, isVector(vector) ? vector : undefined);
    },
    offer(update: Uint8Array, rights: Rights): Offer {
      if (update.length > rules.mostUpdateBytes) return { kind: 'refused', code: 'too-large' };
      const offered = parseUpdate(update);
      if (offered === undefined) return { kind: 'refused', code: 'malformed' };
      if (contradicts(doc, offered)) return { kind: 'refused', code: 'malformed' };
      if (isContained(doc, offered)) return { kind: 'known' };
      if (rights === 'read') return { kind: 'refused', code: 'not-a-writer' };
      const flaw = flawOf(offered, rules);
      if (flaw !== undefined) return { kind: 'refused', code: flaw };
      if (isEarly(doc, offered)) return { kind: 'early' };
      if (!size.hasRoomFor(update.length)) return { kind: 'refused', code: 'too-large' };
      const outcome = trial.tryOut(update);
      if (outcome === 'sound') return { kind: 'new', update };
      return { kind: 'refused', code: outcome === 'malformed' ? 'malformed' : 'bad-key' };
    },
    apply(update) {
      Y.applyUpdate(doc, update);
      trial.follow(update);
      size.grew(update.length);
    },
    forgo: trial.forget,
    state: () => Y.encodeStateAsUpdate(doc),
    close() {
      trial.close();
      doc.destroy();
    },
  };
}

/** Whether untrusted bytes say what somebody already holds. */
function isVector(bytes: Uint8Array): boolean {
  try {
    Y.decodeStateVector(bytes);
    return true;
  } catch (error) {
    if (error instanceof Error) return false;
    throw error;
  }
}

/** Watches the size of a document from above, and measures it only when the bound comes near the limit. */
function openSizeWatch(doc: Y.Doc, initial: number, most: number) {
  let bound = initial;
  return {
    hasRoomFor(bytes: number): boolean {
      if (bound + bytes > most) bound = Y.encodeStateAsUpdate(doc).length;
      return bound + bytes <= most;
    },
    grew(bytes: number): void {
      bound += bytes;
    },
  };
}
