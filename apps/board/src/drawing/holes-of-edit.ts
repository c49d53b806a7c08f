import type { NamedEdit } from '@loopwright/document';
import type { HoleId, RoutingId } from '@loopwright/model';

/** The holes of a routing that an edit takes in hand. */
export function holesOfEdit(edit: NamedEdit, routing: RoutingId): readonly HoleId[] {
  if (edit.edit === 'several') return edit.edits.flatMap((each) => holesOfEdit(each, routing));
  if (edit.edit === 'move holes') return edit.routing === routing ? edit.holes : [];
  if (!('hole' in edit) || edit.routing !== routing) return [];
  return edit.edit === 'exchange corridors' ? [edit.hole, edit.with] : [edit.hole];
}
