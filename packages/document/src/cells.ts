import { keyOf, ROOTS, type Root } from './roots.ts';

/** One key of the shared document and what shall stand there; `null` when nothing is decided any more. */
export interface Write {
  readonly root: Root;
  readonly group: string;
  readonly part: string;
  readonly value: unknown;
}

export type Parts = ReadonlyMap<string, unknown>;

/** Every key of the document with its value, by collection, group and part. Never changed: laying writes over gives new cells. */
export type Cells = Readonly<Record<Root, ReadonlyMap<string, Parts>>>;

const NO_PARTS: Parts = new Map();
const NO_GROUPS: ReadonlyMap<string, Parts> = new Map();

export const NO_CELLS: Cells = {
  site: NO_GROUPS,
  bases: NO_GROUPS,
  marks: NO_GROUPS,
  features: NO_GROUPS,
  images: NO_GROUPS,
  sketches: NO_GROUPS,
  teeSets: NO_GROUPS,
  routings: NO_GROUPS,
  loops: NO_GROUPS,
  rounds: NO_GROUPS,
  holes: NO_GROUPS,
  settings: NO_GROUPS,
  dispositions: NO_GROUPS,
};

/** The parts of one group; none when there is no such group. */
export function partsOf(cells: Cells, root: Root, group: string): Parts {
  return cells[root].get(group) ?? NO_PARTS;
}

/** What stands at a key; `null` when nothing is decided there, as when the key was never written. */
export function valueAt(cells: Cells, write: Omit<Write, 'value'>): unknown {
  return partsOf(cells, write.root, write.group).get(write.part) ?? null;
}

/** Groups that a list of writes touches, by collection. */
export function touchedBy(writes: readonly Write[]): ReadonlyMap<Root, ReadonlySet<string>> {
  const touched = new Map<Root, Set<string>>();
  for (const { root, group } of writes) {
    const groups = touched.get(root);
    if (groups) groups.add(group);
    else touched.set(root, new Set([group]));
  }
  return touched;
}

/**
 * The cells with writes laid over them. Collections and groups that no write touches keep their identity.
 *
 * Cost: O(writes + groups of the touched collections).
 */
export function withWrites(cells: Cells, writes: readonly Write[]): Cells {
  const touched = touchedBy(writes);
  const next = { ...cells };
  const fresh = new Map<string, Map<string, unknown>>();
  for (const root of ROOTS) {
    const groups = touched.get(root);
    if (!groups) continue;
    const copy = new Map(cells[root]);
    for (const group of groups) {
      const parts = new Map(partsOf(cells, root, group));
      copy.set(group, parts);
      fresh.set(`${root} ${group}`, parts);
    }
    next[root] = copy;
  }
  for (const { root, group, part, value } of writes) fresh.get(`${root} ${group}`)?.set(part, value);
  return next;
}

/** The full key of a write in its collection. */
export function writtenKey(write: Omit<Write, 'value'>): string {
  return keyOf(write.group, write.part);
}
