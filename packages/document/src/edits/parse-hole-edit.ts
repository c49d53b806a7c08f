import {
  type Fields,
  type HoleId,
  isFields,
  isId,
  LIMITS,
  parseCorridor,
  parseEach,
  parseGreen,
  parseGreenShape,
  parseLines,
  parseName,
  parseNumber,
  parseParChoice,
  parsePart,
  parsePoint,
  parsePoints,
  parseRelation,
  parseTurnPoint,
  parseVerdict,
  type SitePoint,
  type TeeSetId,
} from '@loopwright/model';
import type { HoleEdit, OfHole, PlaceInLoop } from './hole-edit.ts';

/** Untrusted fields as an edit of a hole; `undefined` when they are none. */
export function parseHoleEdit(value: Fields): HoleEdit | undefined {
  if (!isId(value.routing)) return undefined;
  if (value.edit === 'move holes') {
    const by = parsePoint(value.by);
    const holes = parseEach(value.holes, LIMITS.holesPerRouting, (id) => (isId(id) ? id : undefined));
    return by && holes && { edit: 'move holes', routing: value.routing, holes, by };
  }
  if (!isId(value.hole)) return undefined;
  const of = { routing: value.routing, hole: value.hole };
  return parseOfPart(value, of) ?? parseInTheRound(value, of) ?? parseOfWhole(value, of) ?? parseSaid(value, of);
}

/** What is done to one part of a hole. */
function parseOfPart(value: Fields, of: OfHole): HoleEdit | undefined {
  const part = parsePart(value.part);
  const { edit, turn, teeSet } = value;
  switch (edit) {
    case 'move part': {
      const to = parsePoint(value.to);
      return part && to && { edit, ...of, part, to };
    }
    case 'pin':
    case 'unpin':
      return part && { edit, ...of, part };
    case 'add turn point': {
      const at = parsePoint(value.at);
      const place = parseNumber(value.place, 0, LIMITS.turnPointsPerHole);
      if (!at || !isId(turn) || place === undefined || !Number.isInteger(place)) return undefined;
      return { edit, ...of, turn, at, place };
    }
    case 'remove turn point':
      return isId(turn) ? { edit, ...of, turn } : undefined;
    case 'propose tee':
      return isId(teeSet) ? { edit, ...of, teeSet } : undefined;
    case 'lengthen': {
      const end = parsePart(value.end);
      const by = parseNumber(value.by, -LIMITS.coordinate, LIMITS.coordinate);
      return isEnd(end) && by !== undefined ? { edit, ...of, end, by } : undefined;
    }
    case 'shape green': {
      const shape = parseGreenShape(value.shape);
      return shape && { edit, ...of, shape };
    }
    default:
      return undefined;
  }
}

function isEnd(part: string | undefined): part is 'green' | `tee:${string}` {
  return part === 'green' || part?.startsWith('tee:') === true;
}

/** What is done to a hole's place in the round. */
function parseInTheRound(value: Fields, of: OfHole): HoleEdit | undefined {
  const { edit } = value;
  switch (edit) {
    case 'remove hole':
    case 'reverse hole':
    case 'take out':
      return { edit, ...of };
    case 'move in the round':
    case 'bring back': {
      const place = parsePlace(value);
      return place && { edit, ...of, ...place };
    }
    case 'exchange corridors':
    case 'swap places':
      return isId(value.with) ? { edit, ...of, with: value.with } : undefined;
    default:
      return undefined;
  }
}

function parsePlace(value: Fields): PlaceInLoop | undefined {
  const after: HoleId | 'first' | undefined = isId(value.after) ? value.after : undefined; // 'first' has the form of an id
  return isId(value.loop) && after ? { loop: value.loop, after } : undefined;
}

/** What is done to a hole as a whole. */
function parseOfWhole(value: Fields, of: OfHole): HoleEdit | undefined {
  const by = parsePoint(value.by);
  const { edit } = value;
  switch (edit) {
    case 'draw hole':
      return parseDrawHole(value, of);
    case 'copy hole':
      return by && isId(value.as) ? { edit, ...of, as: value.as, by } : undefined;
    case 'move hole':
      return by && { edit, ...of, by };
    case 'set waypoints': {
      const waypoints = parsePoints(value.waypoints, LIMITS.waypointsPerHole);
      return waypoints && { edit, ...of, waypoints };
    }
    case 'set corridor': {
      const corridor = value.corridor === null ? null : parseCorridor(value.corridor);
      return corridor === undefined ? undefined : { edit, ...of, corridor };
    }
    default:
      return undefined;
  }
}

/** A hole as far as it is drawn: all of it, or it is another hole. */
function parseDrawHole(value: Fields, of: OfHole): HoleEdit | undefined {
  const seat = value.seat === 'spare' ? 'spare' : isFields(value.seat) ? parsePlace(value.seat) : undefined;
  const tees = parseTees(value.tees);
  const turnPoints = parseEach(value.turnPoints, LIMITS.turnPointsPerHole, parseTurnPoint);
  const green = value.green === undefined ? undefined : parseGreen(value.green);
  if (!seat || !tees || !turnPoints || (value.green !== undefined && !green)) return undefined;
  return { edit: 'draw hole', ...of, seat, tees, turnPoints, ...(green && { green }) };
}

function parseTees(value: unknown): Readonly<Record<TeeSetId, SitePoint>> | undefined {
  if (!isFields(value)) return undefined;
  const listed = Object.entries(value);
  if (listed.length > LIMITS.teeSets) return undefined;
  const tees = listed.flatMap(([teeSet, untrusted]): [TeeSetId, SitePoint][] => {
    const at = parsePoint(untrusted);
    return at && isId(teeSet) ? [[teeSet, at]] : [];
  });
  return tees.length === listed.length ? Object.fromEntries(tees) : undefined;
}

/** What is said of a hole. */
function parseSaid(value: Fields, of: OfHole): HoleEdit | undefined {
  const { edit } = value;
  switch (edit) {
    case 'set par': {
      const par = parseParChoice(value.par);
      const { sex } = value;
      return par && (sex === 'men' || sex === 'women') ? { edit, ...of, sex, par } : undefined;
    }
    case 'judge': {
      const verdict = parseVerdict(value.verdict);
      return verdict && { edit, ...of, verdict, reason: parseLines(value.reason, LIMITS.note) ?? '' };
    }
    case 'relate':
    case 'unrelate': {
      const relation = parseRelation(value.relation);
      return relation && { edit, ...of, relation };
    }
    case 'name hole':
      return { edit, ...of, name: parseName(value.name, LIMITS.name) ?? '' };
    case 'note hole':
      return { edit, ...of, note: parseLines(value.note, LIMITS.note) ?? '' };
    default:
      return undefined;
  }
}
