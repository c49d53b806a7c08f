import * as Y from 'yjs';
import { ROOTS } from '../roots.ts';

/** A document of the room's collections. */
export function newDoc(): Y.Doc {
  const doc = new Y.Doc();
  for (const root of ROOTS) doc.getMap(root);
  return doc;
}

/** A second copy of a room, in which updates are tried before anything is stored. */
export interface Trial {
  /** `sound` when the update can be applied, leaves nothing pending, and deletes no key. */
  tryOut(update: Uint8Array): 'sound' | 'malformed' | 'deletes-a-key';
  /** What the room itself has applied. */
  follow(update: Uint8Array): void;
  /** What was tried and has not been followed is not coming. */
  forget(): void;
  close(): void;
}

/**
 * Opens the trial copy of a room.
 *
 * Whether a deletion takes a key away can only be told after integration: an honest page also deletes what it has
 * overwritten, and what lost against somebody else's value. The copy is ahead of the room by what was tried and is on
 * its way to the store; it is made anew from the room after an update that was no good, and when the store failed.
 *
 * Cost: O(update); O(room) after a refusal or a failure.
 */
export function openTrial(room: Y.Doc): Trial {
  let copy: Y.Doc | undefined;
  const ahead = new Set<Uint8Array>();

  const drop = () => {
    copy?.destroy();
    copy = undefined;
    ahead.clear();
  };
  const copyOfRoom = () => {
    const fresh = newDoc();
    Y.applyUpdate(fresh, Y.encodeStateAsUpdate(room));
    return fresh;
  };

  return {
    tryOut(update) {
      copy ??= copyOfRoom();
      const outcome = outcomeIn(copy, update);
      if (outcome === 'sound') ahead.add(update);
      else drop();
      return outcome;
    },
    follow(update) {
      if (!ahead.delete(update) && copy) Y.applyUpdate(copy, update);
    },
    forget() {
      if (ahead.size > 0) drop();
    },
    close: drop,
  };
}

function outcomeIn(doc: Y.Doc, update: Uint8Array): 'sound' | 'malformed' | 'deletes-a-key' {
  try {
    return doc.transact((transaction) => {
      Y.applyUpdate(doc, update);
      if (doc.store.pendingStructs !== null || doc.store.pendingDs !== null) return 'malformed';
      for (const [type, keys] of transaction.changed) {
        for (const key of keys) if (key === null || type._map.get(key)?.deleted !== false) return 'deletes-a-key';
      }
      return 'sound';
    });
  } catch (error) {
    if (error instanceof Error) return 'malformed'; // structs that refer to each other in a ring, or to themselves
    throw error;
  }
}
