import {
  type Hole,
  isFields,
  isOrderKey,
  LIMITS,
  type PartId,
  parseCorridor,
  parseGreenShape,
  parseLines,
  parseName,
  parseParChoice,
  parsePart,
  parsePoint,
  parsePoints,
  parseSeat,
  parseVerdict,
  type Relation,
  type RelationKind,
  type Seat,
  type SitePoint,
  type TeeSetId,
  type TurnPoint,
  type Verdict,
} from '@loopwright/model';
import type { Parts } from '../cells.ts';
import { frozen } from '../plain-value.ts';
import { type PartReader, partReader, type Read } from './part-reader.ts';

/** The words of a relation as they stand in keys. */
export const RELATION_WORDS: Readonly<Record<RelationKind, string>> = {
  'shares its green with': 'green',
  'crosses on purpose': 'crossing',
  'shares fairway with': 'fairway',
};
const RELATION_KINDS = Object.keys(RELATION_WORDS) as readonly RelationKind[];

/** A hole whose seat cannot be read is shown as a spare one, so that it is not lost. */
const SPARE: Seat = { in: 'spare', key: 'a0' };

/** A turn point with its place in the order of play. */
export interface PlacedTurn extends TurnPoint {
  readonly order: string;
}

/** An untrusted value as a turn point's place and order. */
export function parsePlacedTurn(id: string, value: unknown): PlacedTurn | undefined {
  const at = parsePoint(value);
  if (at === undefined || !isFields(value) || !isOrderKey(value.order)) return undefined;
  return { id, at, order: value.order };
}

interface Judgement {
  readonly verdict: Verdict;
  readonly reason: string;
}

function parseJudgement(value: unknown): Judgement | undefined {
  if (!isFields(value)) return undefined;
  const verdict = parseVerdict(value.verdict);
  return verdict && { verdict, reason: parseLines(value.reason, LIMITS.note) ?? '' };
}

/**
 * One hole from its parts. It is there as long as anything about it is decided, and a spare one while its seat is not;
 * a part that cannot be read is left out and reported. Removed holes are read too: who looks them up by id still finds them.
 */
export function readHole(group: string, parts: Parts): Read<Hole> {
  const reader = partReader(parts);
  const isThere = [...parts.values()].some((value) => value !== null);
  if (!isThere) return { value: undefined, order: '', unread: [] };
  const seat = reader.take('seat', parseSeat) ?? SPARE;
  const name = reader.take('name', (value) => parseName(value, LIMITS.name));
  const note = reader.take('note', (value) => parseLines(value, LIMITS.note));
  const judgement = reader.take('verdict', parseJudgement);
  const corridor = reader.take('corridor', parseCorridor);
  const centre = reader.take('green', parsePoint);
  const shape = reader.take('green-shape', parseGreenShape) ?? PLAIN_GREEN;
  const value: Hole = {
    id: group.slice(group.indexOf('/') + 1),
    ...(name && { name }),
    ...(note && { note }),
    seat,
    tees: readTees(reader),
    turnPoints: readTurns(reader).map(({ id, at }) => ({ id, at })),
    ...(centre && { green: { centre, ...shape } }),
    par: {
      men: reader.take('par-men', parseParChoice) ?? 'by length',
      women: reader.take('par-women', parseParChoice) ?? 'by length',
    },
    verdict: judgement?.verdict ?? 'undecided',
    ...(judgement?.reason && { verdictReason: judgement.reason }),
    pinned: readPins(reader),
    ...(corridor && { corridor }),
    waypoints: reader.take('waypoints', (points) => parsePoints(points, LIMITS.waypointsPerHole)) ?? [],
    relations: readRelations(reader),
  };
  return { value: frozen(value), order: seat.key, unread: reader.unread() };
}

/** Common practice, no source: a round green of some 600 m², where nobody has said more. */
const PLAIN_GREEN = { length: 28, width: 28, bearing: 0 } as const;

/** With those of tee sets that were taken away, and may come back. */
const MOST_TEES = 8 * LIMITS.teeSets;

function readTees(reader: PartReader): Readonly<Record<TeeSetId, SitePoint>> {
  const tees: [TeeSetId, SitePoint][] = [];
  for (const { part, rest } of reader.startingWith('tee:')) {
    const at = reader.take(part, parsePoint);
    if (at === undefined) continue;
    if (tees.length < MOST_TEES) tees.push([rest, at]);
    else reader.note(part);
  }
  return Object.fromEntries(tees);
}

/** At most three, in order of play; ties go by id. */
function readTurns(reader: PartReader): readonly PlacedTurn[] {
  const turns: PlacedTurn[] = [];
  for (const { part, rest } of reader.startingWith('turn:')) {
    const turn = reader.take(part, (value) => parsePlacedTurn(rest, value));
    if (turn) turns.push(turn);
  }
  turns.sort((a, b) => (a.order === b.order ? (a.id < b.id ? -1 : 1) : a.order < b.order ? -1 : 1));
  for (const { id } of turns.slice(LIMITS.turnPointsPerHole)) reader.note(`turn:${id}`);
  return turns.slice(0, LIMITS.turnPointsPerHole);
}

function readPins(reader: PartReader): readonly PartId[] {
  const pinned: PartId[] = [];
  for (const { part, rest } of reader.startingWith('pin:')) {
    const isPinned = reader.take(part, (value) => (typeof value === 'boolean' ? value : undefined));
    const pin = parsePart(rest);
    if (isPinned && pin && pinned.length < LIMITS.pinnedPerHole) pinned.push(pin);
  }
  return pinned;
}

function readRelations(reader: PartReader): readonly Relation[] {
  const relations: Relation[] = [];
  for (const kind of RELATION_KINDS) {
    for (const { part, rest } of reader.startingWith(`relation:${RELATION_WORDS[kind]}:`)) {
      const holds = reader.take(part, (value) => (typeof value === 'boolean' ? value : undefined));
      if (holds && relations.length < LIMITS.relationsPerHole) relations.push({ kind, hole: rest });
    }
  }
  return relations;
}
