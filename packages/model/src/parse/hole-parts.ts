import type { CorridorWidths, ParChoice, Relation, Seat, TurnPoint, Verdict } from '../hole.ts';
import { isId, type PartId } from '../ids.ts';
import { toMillimetre } from '../millimetre.ts';
import { isOrderKey } from '../order-key.ts';
import { isFields, parseWord } from './fields.ts';
import { LIMITS } from './limits.ts';
import { parseNumber } from './number.ts';
import { parsePoint } from './point.ts';

/** Where a hole sits: in a loop, in the spare tray or off the plan. The key is its place in the order. */
export function parseSeat(value: unknown): Seat | undefined {
  if (!isFields(value) || !isOrderKey(value.key)) return undefined;
  const key = value.key;
  if (value.in === 'loop') return isId(value.loop) ? { in: 'loop', loop: value.loop, key } : undefined;
  return value.in === 'spare' || value.in === 'removed' ? { in: value.in, key } : undefined;
}

const PARS: readonly ParChoice[] = [3, 4, 5, 6, 'by length'];

export function parseParChoice(value: unknown): ParChoice | undefined {
  return PARS.find((par) => par === value);
}

const VERDICTS: readonly Verdict[] = ['keeper', 'sound', 'weak', 'undecided'];

export function parseVerdict(value: unknown): Verdict | undefined {
  return parseWord(value, VERDICTS);
}

export function parseTurnPoint(value: unknown): TurnPoint | undefined {
  if (!isFields(value) || !isId(value.id)) return undefined;
  const at = parsePoint(value.at);
  return at && { id: value.id, at };
}

/** What the designer means between two holes. */
export function parseRelation(value: unknown): Relation | undefined {
  if (!isFields(value) || !isId(value.hole)) return undefined;
  const kind = parseWord(value.kind, ['shares its green with', 'crosses on purpose', 'shares fairway with']);
  return kind && { kind, hole: value.hole };
}

/** The name of a part of a hole: `green`, `tee:` or `turn:` with an id. */
export function parsePart(value: unknown): PartId | undefined {
  if (value === 'green') return 'green';
  if (typeof value !== 'string') return undefined;
  if (value.startsWith('tee:') && isId(value.slice(4))) return `tee:${value.slice(4)}`;
  return value.startsWith('turn:') && isId(value.slice(5)) ? `turn:${value.slice(5)}` : undefined;
}

/** Half-widths where the designer departs from the board's settings; undefined when none can be read. */
export function parseCorridor(value: unknown): CorridorWidths | undefined {
  if (!isFields(value)) return undefined;
  const widths: { -readonly [Place in keyof CorridorWidths]: number } = {};
  for (const place of ['tee', 'landing', 'green', 'behind'] as const) {
    const width = parseNumber(value[place], 0, LIMITS.corridorWidth);
    if (width !== undefined) widths[place] = toMillimetre(width);
  }
  return Object.keys(widths).length > 0 ? widths : undefined;
}
