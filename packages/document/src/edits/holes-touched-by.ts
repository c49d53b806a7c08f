import type { HoleId, RoutingId } from '@loopwright/model';
import type { NamedEdit } from './named-edit.ts';

/**
 * The holes an edit speaks of that look otherwise when it is done, each once; of a copy that is the new one. What moves
 * a whole loop or routing names none.
 *
 * @param routing  only the holes of this one
 */
export function holesTouchedBy(edit: NamedEdit, routing?: RoutingId): readonly HoleId[] {
  if (edit.edit === 'several') return [...new Set(edit.edits.flatMap((each) => holesTouchedBy(each, routing)))];
  if (!('routing' in edit) || (routing !== undefined && edit.routing !== routing)) return [];
  switch (edit.edit) {
    case 'move holes':
      return [...new Set(edit.holes)];
    case 'exchange corridors':
    case 'swap places':
      return [edit.hole, edit.with];
    case 'copy hole':
      return [edit.as];
    case 'copy loop':
      return edit.holes.map(({ as }) => as);
    default:
      return 'hole' in edit ? [edit.hole] : [];
  }
}
