import type { Hole } from '../hole.ts';
import { isId, type TeeSetId } from '../ids.ts';
import type { SitePoint } from '../space.ts';
import { isFields, parseSome } from './fields.ts';
import { parseGreen } from './green.ts';
import {
  parseCorridor,
  parseParChoice,
  parsePart,
  parseRelation,
  parseSeat,
  parseTurnPoint,
  parseVerdict,
} from './hole-parts.ts';
import { LIMITS } from './limits.ts';
import { parsePoint } from './point.ts';
import { parseLines, parseName } from './text.ts';

/**
 * One hole with all its parts.
 *
 * Only its id is needed: a part that cannot be read is left out, and a hole without tee or green is incomplete. A hole
 * without a readable seat becomes a spare one, so that it is seen.
 */
export function parseHole(value: unknown): Hole | undefined {
  if (!isFields(value) || !isId(value.id)) return undefined;
  const name = parseName(value.name, LIMITS.name);
  const note = parseLines(value.note, LIMITS.note);
  const verdictReason = parseLines(value.verdictReason, LIMITS.note);
  const green = parseGreen(value.green);
  const corridor = parseCorridor(value.corridor);
  const par = isFields(value.par) ? value.par : {};
  return {
    id: value.id,
    ...(name && { name }),
    ...(note && { note }),
    seat: parseSeat(value.seat) ?? { in: 'spare', key: 'a0' },
    tees: parseTees(value.tees),
    turnPoints: parseSome(value.turnPoints, LIMITS.turnPointsPerHole, parseTurnPoint),
    ...(green && { green }),
    par: { men: parseParChoice(par.men) ?? 'by length', women: parseParChoice(par.women) ?? 'by length' },
    verdict: parseVerdict(value.verdict) ?? 'undecided',
    ...(verdictReason && { verdictReason }),
    pinned: parseSome(value.pinned, LIMITS.pinnedPerHole, parsePart),
    ...(corridor && { corridor }),
    waypoints: parseSome(value.waypoints, LIMITS.waypointsPerHole, parsePoint),
    relations: parseSome(value.relations, LIMITS.relationsPerHole, parseRelation),
  };
}

function parseTees(value: unknown): Readonly<Record<TeeSetId, SitePoint>> {
  if (!isFields(value)) return {};
  const tees: Record<TeeSetId, SitePoint> = {};
  for (const teeSet of Object.keys(value).slice(0, LIMITS.teeSets)) {
    const at = parsePoint(value[teeSet]);
    if (at && isId(teeSet)) tees[teeSet] = at;
  }
  return tees;
}
