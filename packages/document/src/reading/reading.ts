import type { Hole, Plan } from '@loopwright/model';
import { type Cells, NO_CELLS, type Parts, partsOf, touchedBy, type Write, withWrites } from '../cells.ts';
import { isSameValue } from '../plain-value.ts';
import { keyOf, ROOTS, type Root } from '../roots.ts';
import { EMPTY_PLAN, planFrom } from './assemble-plan.ts';
import type { Read } from './part-reader.ts';
import { readDisposition } from './read-disposition.ts';
import { readHole } from './read-hole.ts';
import type { ReadGroups, ReadRoots, ValueOf } from './read-roots.ts';
import { readSettings, readSiteFrame } from './read-site.ts';
import {
  readBase,
  readFeature,
  readImage,
  readLoop,
  readMark,
  readRound,
  readRoutingFrame,
  readSketch,
  readTeeSet,
} from './read-things.ts';

const READERS: { readonly [R in Root]: (group: string, parts: ReadonlyMap<string, unknown>) => Read<ValueOf[R]> } = {
  site: readSiteFrame,
  bases: readBase,
  marks: readMark,
  features: readFeature,
  images: readImage,
  sketches: readSketch,
  teeSets: readTeeSet,
  routings: readRoutingFrame,
  loops: readLoop,
  rounds: readRound,
  holes: readHole,
  settings: readSettings,
  dispositions: readDisposition,
};

/** The document at one moment: its cells, what they read as, and the plan they make. Never changed. */
export interface Reading {
  readonly cells: Cells;
  readonly read: ReadRoots;
  readonly plan: Plan;
}

const NO_READS: ReadRoots = {
  site: new Map(),
  bases: new Map(),
  marks: new Map(),
  features: new Map(),
  images: new Map(),
  sketches: new Map(),
  teeSets: new Map(),
  routings: new Map(),
  loops: new Map(),
  rounds: new Map(),
  holes: new Map(),
  settings: new Map(),
  dispositions: new Map(),
};

/** A document in which nothing is decided yet. */
export const NOTHING_READ: Reading = { cells: NO_CELLS, read: NO_READS, plan: EMPTY_PLAN };

/**
 * The reading with writes laid over it, as if they had been made: the same for a live drag and for a change that has
 * arrived. Only what the writes touch is read again; everything else keeps its identity, and so does what reads the
 * same as before. Never throws, and never writes.
 *
 * Cost: O(writes + groups of the touched collections).
 *
 * @param memory  holes keep their identity too when the same writes are laid over the same hole again, whatever else
 *   moved in between: of ten drags laid one over the other, only those that went on make new holes
 */
export function layOver(reading: Reading, writes: readonly Write[], memory: LaidHoles = new WeakMap()): Reading {
  if (writes.length === 0) return reading;
  const cells = withWrites(reading.cells, writes);
  const touched = touchedBy(writes);
  const again = <R extends Root>(root: R) => readAgain(root, cells, reading.read[root], touched.get(root));
  const read: ReadRoots = {
    site: again('site'),
    bases: again('bases'),
    marks: again('marks'),
    features: again('features'),
    images: again('images'),
    sketches: again('sketches'),
    teeSets: again('teeSets'),
    routings: again('routings'),
    loops: again('loops'),
    rounds: again('rounds'),
    holes: holesAgain(reading, cells, writes, touched.get('holes'), memory),
    settings: again('settings'),
    dispositions: again('dispositions'),
  };
  return { cells, read, plan: planFrom(read, reading.read, reading.plan) };
}

function readAgain<R extends Root>(
  root: R,
  cells: Cells,
  before: ReadGroups<R>,
  touched: ReadonlySet<string> | undefined,
): ReadGroups<R> {
  if (touched === undefined) return before;
  const groups = new Map(before);
  for (const group of touched) {
    const fresh = READERS[root](group, partsOf(cells, root, group));
    const old = before.get(group);
    groups.set(group, old && isSameValue(old.value, fresh.value) ? { ...fresh, value: old.value } : fresh);
  }
  return groups;
}

/** What was laid over a hole last, by the hole's parts as they were before. */
export type LaidHoles = WeakMap<Parts, { readonly writes: readonly Write[]; readonly read: Read<Hole> }>;

function holesAgain(
  reading: Reading,
  cells: Cells,
  writes: readonly Write[],
  touched: ReadonlySet<string> | undefined,
  memory: LaidHoles,
): ReadGroups<'holes'> {
  if (touched === undefined) return reading.read.holes;
  const groups = new Map(reading.read.holes);
  const toRead = new Set<string>();
  const own = (group: string) => writes.filter((write) => write.root === 'holes' && write.group === group);
  for (const group of touched) {
    const known = memory.get(partsOf(reading.cells, 'holes', group));
    if (known && isSameValue(known.writes, own(group))) groups.set(group, known.read);
    else toRead.add(group);
  }
  const fresh = readAgain('holes', cells, groups, toRead);
  for (const group of toRead) {
    const [base, read] = [reading.cells.holes.get(group), fresh.get(group)];
    if (base && read) memory.set(base, { writes: own(group), read });
  }
  return fresh;
}

/** Where fields that could not be read stand, in the order of collections and keys. */
export function unreadOf(read: ReadRoots): readonly { readonly root: Root; readonly key: string }[] {
  return ROOTS.flatMap((root) => {
    const keys: string[] = [];
    for (const [group, { unread }] of read[root]) for (const part of unread) keys.push(keyOf(group, part));
    return keys.sort().map((key) => ({ root, key }));
  });
}
