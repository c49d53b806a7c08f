import { holeOf, LIMITS } from '@loopwright/model';
import { RELATION_WORDS } from '../reading/read-hole.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/** States what is meant between two holes, or takes it back. */
export function relate(edit: EditNamed<'relate' | 'unrelate'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const { kind, hole: other } = edit.relation;
  if (other === open.hole.id) return 'nothing';
  const shallHold = edit.edit === 'relate';
  const holds = open.hole.relations.some((relation) => relation.kind === kind && relation.hole === other);
  if (holds === shallHold) return 'nothing';
  if (shallHold && !holeOf(open.routing, other)) return 'gone';
  if (shallHold && open.hole.relations.length >= LIMITS.relationsPerHole) return 'nothing';
  return [open.write(`relation:${RELATION_WORDS[kind]}:${other}`, shallHold)];
}
