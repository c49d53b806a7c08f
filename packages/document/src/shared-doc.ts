import { LIMITS } from '@loopwright/protocol';
import type * as Y from 'yjs';
import { type Write, writtenKey } from './cells.ts';
import { plainSize } from './plain-value.ts';
import { placeOf, ROOTS, type Root } from './roots.ts';

/** Marks the transactions of this page's own edits, so that the connection knows what to count. */
export const OWN_EDIT = 'own edit';

/** Stands for a value that is not plain JSON: no reader takes it for anything. */
const UNREADABLE: unknown = Object.freeze(() => undefined);

const VALUE_LIMITS = { mostDepth: LIMITS.mostValueDepth, mostBytes: LIMITS.mostValueBytes };

function mapOf(doc: Y.Doc, root: Root): Y.Map<unknown> {
  return doc.getMap<unknown>(root);
}

/** What stands under a key now, as a write; `undefined` for a key outside the grammar, which nobody reads. */
function writeAt(map: Y.Map<unknown>, root: Root, key: string): Write | undefined {
  const place = placeOf(root, key);
  if (place === undefined) return undefined;
  const value = map.get(key) ?? null;
  return { root, ...place, value: plainSize(value, VALUE_LIMITS) === undefined ? UNREADABLE : value };
}

/** Keys that follow no grammar: skipped, and reported. */
interface StrayKey {
  readonly root: Root;
  readonly key: string;
}

/** Changes that have come in since they were last taken. */
export interface Changes {
  take(): readonly Write[];
  stray(): readonly StrayKey[];
}

/**
 * Follows every collection of a shared document. Whatever a peer writes, this neither throws nor writes: the library
 * stops at this file.
 */
export function followChanges(doc: Y.Doc): Changes {
  const waiting = new Map<Root, Set<string>>();
  const stray = new Map<string, StrayKey>();
  for (const root of ROOTS) {
    const map = mapOf(doc, root);
    waiting.set(root, new Set(map.keys()));
    map.observe((event) => {
      for (const key of event.keysChanged) waiting.get(root)?.add(key);
    });
  }
  return {
    take() {
      const writes: Write[] = [];
      for (const [root, keys] of waiting) {
        const map = mapOf(doc, root);
        for (const key of keys) {
          const write = writeAt(map, root, key);
          if (write) writes.push(write);
          else stray.set(`${root} ${key}`, { root, key });
        }
        keys.clear();
      }
      return writes;
    },
    stray: () => [...stray.values()].sort((a, b) => (`${a.root} ${a.key}` < `${b.root} ${b.key}` ? -1 : 1)),
  };
}

/** Writes keys in one transaction. */
export function writeTo(doc: Y.Doc, writes: readonly Write[]): void {
  doc.transact(() => {
    for (const write of writes) mapOf(doc, write.root).set(writtenKey(write), write.value);
  }, OWN_EDIT);
}
