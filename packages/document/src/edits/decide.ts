import { LIMITS, parseDisposition, parseLines } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { routingOf } from './open-hole.ts';

/**
 * Records what was decided about a finding. Whoever decides later replaces it.
 *
 * @throws RangeError if the disposition could not be read again: the caller's bug
 */
export function decide(edit: EditNamed<'decide'>, reading: Reading): EditWrites {
  const words = parseLines(edit.disposition.words, LIMITS.note) ?? '';
  const disposition = parseDisposition({ ...edit.disposition, words });
  if (disposition === undefined) throw new RangeError('decide: the disposition cannot be read');
  const { routing, finding, kind, measured } = disposition;
  if (!routingOf(reading, routing)) return 'gone';
  return [{ root: 'dispositions', group: `${routing}/${finding}`, part: '', value: { kind, words, measured } }];
}

/** Takes a decision about a finding back: it is open again. */
export function reopen(edit: EditNamed<'reopen'>, reading: Reading): EditWrites {
  const isDecided = reading.plan.dispositions.some(
    ({ routing, finding }) => routing === edit.routing && finding === edit.finding,
  );
  if (!isDecided) return 'nothing';
  return [{ root: 'dispositions', group: `${edit.routing}/${edit.finding}`, part: '', value: null }];
}
