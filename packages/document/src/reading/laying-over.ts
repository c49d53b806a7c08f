import type { EditWrites } from '../edits/edit-named.ts';
import type { NamedEdit } from '../edits/named-edit.ts';
import { runsOf } from '../edits/runs.ts';
import { writesFor } from '../edits/writes-for.ts';
import { type LaidHoles, layOver, type Reading } from './reading.ts';

/** Lays live edits over a reading, in order; edits that no longer apply are left out. */
export type LayingOver = (reading: Reading, live: readonly NamedEdit[]) => Reading;

/**
 * With a memory: an edit that rests is not worked out again while the reading beneath it stays, and a hole it moves
 * stays the same object. Of ten people's drags the plan is put together once and not ten times.
 */
export function openLayingOver(): LayingOver {
  const holes: LaidHoles = new WeakMap();
  // Kept as long as the reading and the edit are in use somewhere.
  const writes = remembering((edit, reading): EditWrites => writesFor(edit, reading));
  const alone = remembering((edit, reading) => laid(reading, [edit]));
  const laid = (reading: Reading, run: readonly NamedEdit[]): Reading => {
    const all = run.flatMap((edit) => {
      const own = writes(edit, reading);
      return typeof own === 'string' ? [] : own;
    });
    return layOver(reading, all, holes);
  };
  return (reading, live) => {
    let now = reading;
    for (const run of runsOf(live)) {
      const [first, second] = run;
      now = first && second === undefined ? alone(first, now) : laid(now, run);
    }
    return now;
  };
}

function remembering<T extends object | string>(work: (edit: NamedEdit, reading: Reading) => T) {
  const known = new WeakMap<Reading, WeakMap<NamedEdit, T>>();
  return (edit: NamedEdit, reading: Reading): T => {
    const ofReading = known.get(reading) ?? new WeakMap<NamedEdit, T>();
    known.set(reading, ofReading);
    const before = ofReading.get(edit);
    if (before !== undefined) return before;
    const value = work(edit, reading);
    ofReading.set(edit, value);
    return value;
  };
}
