import { type HoleId, parseSeat } from '@loopwright/model';
import { type Cells, valueAt, type Write } from './cells.ts';
import type { DoneStep } from './contract.ts';
import { isSameValue } from './plain-value.ts';
import { type KeyChange, takenUpBy } from './taken-up.ts';

/** One undo step: what was done, and the keys it changed. */
export interface Step extends DoneStep {
  readonly changes: readonly KeyChange[];
}

/** The keys that writes change, as they stood before. */
export function changesOf(writes: readonly Write[], before: Cells): readonly KeyChange[] {
  return writes.map(({ value, ...at }) => ({ at, before: valueAt(before, at), after: value }));
}

/**
 * The writes that take a step back where it still stands, the step the other way round, and what others changed since.
 * What the step made and others have worked on since stands whole: half a hole, or a routing gone from under somebody's
 * hands, is nobody's.
 */
export function back(step: Step, cells: Cells) {
  const takenUp = takenUpBy(step, cells);
  const isMine = ({ at, after }: KeyChange) => isSameValue(valueAt(cells, at), after) && !takenUp(at);
  const mine = step.changes.filter(isMine);
  const theirs = step.changes.filter((change) => !isMine(change)).map(({ at }) => at);
  return {
    writes: mine.map(({ at, before }): Write => ({ ...at, value: before })),
    kept: { ...step, changes: mine.map(({ at, before, after }) => ({ at, before: after, after: before })) },
    theirs,
    overtaken: theirs.length,
  };
}

/**
 * Holes of a step that somebody else has taken off the plan since: what goes back of them is kept for when they are
 * brought back, but nobody sees it now.
 */
export function goneHoles(step: Step, writes: readonly Write[], cells: Cells): readonly HoleId[] {
  const seated = new Set(
    writes.filter(({ root, part }) => root === 'holes' && part === 'seat').map(({ group }) => group),
  );
  const groups = new Set(step.changes.flatMap(({ at }) => (at.root === 'holes' ? [at.group] : [])));
  return [...groups].flatMap((group) => {
    const seat = parseSeat(valueAt(cells, { root: 'holes', group, part: 'seat' }));
    return seat?.in === 'removed' && !seated.has(group) ? [group.slice(group.indexOf('/') + 1)] : [];
  });
}
