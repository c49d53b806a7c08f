import type { Disposition } from '../disposition.ts';
import { isId } from '../ids.ts';
import { isFields, parseWord } from './fields.ts';
import { LIMITS } from './limits.ts';
import { parseNumber } from './number.ts';
import { parseLines } from './text.ts';

const KEY_PATTERN = /^[a-z0-9-]+(\|[a-z0-9:>-]*)*$/;

/** What was decided about a finding. Its key is a code and ids joined by '|'. */
export function parseDisposition(value: unknown): Disposition | undefined {
  if (!isFields(value) || !isId(value.routing) || typeof value.finding !== 'string') return undefined;
  if (value.finding.length > LIMITS.findingKey || !KEY_PATTERN.test(value.finding)) return undefined;
  const kind = parseWord(value.kind, [
    'to be checked by',
    'checked on site by',
    'mitigated by',
    'kept on purpose, because',
  ]);
  const words = parseLines(value.words, LIMITS.note);
  const measured = parseNumber(value.measured, -1e9, 1e9);
  if (kind === undefined || words === undefined || measured === undefined) return undefined;
  return { routing: value.routing, finding: value.finding, kind, words, measured };
}
