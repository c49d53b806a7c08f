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
  close(): void;
}

/**
 * Opens the trial copy of a room.
 *
 * Whether a deletion takes a key away can only be told after integration: an honest page also deletes what it has
 * overwritten, and what lost against somebody else's value. The copy is made anew from the room after an update that
 * was no good, and when one that was tried has not (yet) been applied, so that it never knows more than the room.
 */
export function openTrial(room: Y.Doc): Trial {
  let copy: Y.Doc | undefined;
  let ahead: Uint8Array | undefined;

  const copyOfRoom = () => {
    copy?.destroy();
    copy = newDoc();
    Y.applyUpdate(copy, Y.encodeStateAsUpdate(room));
    return copy;
  };
  const drop = () => {
    copy?.destroy();
    copy = undefined;
    ahead = undefined;
  };

  return {
    tryOut(update) {
      const doc = ahead === undefined && copy !== undefined ? copy : copyOfRoom();
      const outcome = outcomeIn(doc, update);
      if (outcome === 'sound') ahead = update;
      else drop();
      return outcome;
    },
    follow(update) {
      if (ahead === update) ahead = undefined;
      else if (ahead !== undefined) drop();
      else if (copy) Y.applyUpdate(copy, update);
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
