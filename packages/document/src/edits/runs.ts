import type { HoleId } from '@loopwright/model';
import type { NamedEdit } from './named-edit.ts';

/** Edits whose writes follow from the hole they speak of alone, and go to it alone. */
const OF_ITS_HOLE_ALONE: ReadonlySet<NamedEdit['edit']> = new Set<NamedEdit['edit']>([
  'move part',
  'move hole',
  'add turn point',
  'remove turn point',
  'lengthen',
  'shape green',
  'propose tee',
  'set waypoints',
]);

/**
 * Edits in order, cut into runs that can be laid over a plan at once: within one, each is about a hole of its own and
 * about nothing else, so that none sees what another wrote. Every other edit is a run by itself.
 */
export function runsOf(edits: readonly NamedEdit[]): readonly (readonly NamedEdit[])[] {
  const runs: NamedEdit[][] = [];
  let open: { readonly run: NamedEdit[]; readonly holes: Set<HoleId> } | undefined;
  for (const edit of edits) {
    const hole = OF_ITS_HOLE_ALONE.has(edit.edit) && 'hole' in edit ? `${edit.routing}/${edit.hole}` : undefined;
    if (hole !== undefined && open && !open.holes.has(hole)) {
      open.run.push(edit);
      open.holes.add(hole);
      continue;
    }
    const run = [edit];
    runs.push(run);
    open = hole === undefined ? undefined : { run, holes: new Set([hole]) };
  }
  return runs;
}
