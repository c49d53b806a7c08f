import { LIMITS, parseLines } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/** Gives the designer's verdict on a hole, with its reason: one decision, so one value. */
export function judge(edit: EditNamed<'judge'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const reason = parseLines(edit.reason, LIMITS.note) ?? '';
  const { hole } = open;
  if (hole.verdict === edit.verdict && (hole.verdictReason ?? '') === reason) return 'nothing';
  return [open.write('verdict', { verdict: edit.verdict, reason })];
}
