import type { Hole } from '../hole.ts';
import { type BaseId, isId, type LoopId, type TeeSetId } from '../ids.ts';
import type { Loop, Round, Routing } from '../plan.ts';
import { holesSeatedIn, spareHoles } from '../seating.ts';
import { isFields, parseSome } from './fields.ts';
import { parseHole } from './hole.ts';
import { LIMITS } from './limits.ts';
import { parseNamedList } from './named-list.ts';
import type { ReadingNotes } from './reading-notes.ts';
import { parseName } from './text.ts';

/** A loop without its holes: those say themselves where they sit. */
export type LoopFrame = Omit<Loop, 'holes'>;

export function parseLoop(value: unknown): LoopFrame | undefined {
  if (!isFields(value) || !isId(value.id)) return undefined;
  return {
    id: value.id,
    name: parseName(value.name, LIMITS.name) ?? 'Loop',
    ...(isId(value.base) && { base: value.base }),
  };
}

export function parseRound(value: unknown): Round | undefined {
  if (!isFields(value) || !isId(value.id)) return undefined;
  return {
    id: value.id,
    name: parseName(value.name, LIMITS.name) ?? 'Round',
    loops: parseSome(value.loops, LIMITS.loopsPerRound, (id) => (isId(id) ? id : undefined)),
  };
}

/** What the parts of a routing may speak of. */
export interface KnownIds {
  readonly bases: ReadonlySet<BaseId>;
  readonly teeSets: ReadonlySet<TeeSetId>;
}

/**
 * One routing. The playing order follows from the holes' seats; what speaks of a loop, base, tee set or hole that is not
 * there is put right with a note: a hole without its loop becomes a spare one.
 */
export function parseRouting(value: unknown, known: KnownIds, notes: ReadingNotes): Routing | undefined {
  if (!isFields(value) || !isId(value.id)) return undefined;
  const name = parseName(value.name, LIMITS.name) ?? value.id;
  const frames = parseNamedList(
    withoutHoles(value.loops),
    { one: 'Loop', most: LIMITS.loopsPerRouting },
    parseLoop,
    notes,
  );
  const loopIds = new Set(frames.map(({ id }) => id));
  const listed = parseNamedList(value.holes, { one: 'Hole', most: LIMITS.holesPerRouting }, parseHole, notes);
  const holeIds = new Set(listed.map(({ id }) => id));
  const holes = listed
    .map((hole) => seated(hole, loopIds, notes))
    .map((hole) => related(hole, holeIds, notes))
    .map((hole) => onKnownTees(hole, known.teeSets, notes))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  const loops = frames.map((frame) => basedLoop(frame, known.bases, holes, notes));
  const rounds = parseNamedList(value.rounds, { one: 'Round', most: LIMITS.roundsPerRouting }, parseRound, notes).map(
    (round) => ({ ...round, loops: round.loops.filter((id) => loopIds.has(id)) }),
  );
  return { id: value.id, name, locked: value.locked === true, loops, rounds, holes, spare: spareHoles(holes) };
}

/** The holes a loop lists follow from the seats, so they are not read. */
function withoutHoles(loops: unknown): unknown {
  if (!Array.isArray(loops)) return loops;
  return loops.map((loop: unknown) => {
    if (!isFields(loop)) return loop;
    const { holes: _, ...frame } = loop;
    return frame;
  });
}

function basedLoop(frame: LoopFrame, bases: ReadonlySet<BaseId>, holes: readonly Hole[], notes: ReadingNotes): Loop {
  const { base, ...unbased } = frame;
  const isKnown = base !== undefined && bases.has(base);
  if (base !== undefined && !isKnown) notes.add(`Loop '${frame.id}' names a base that is not there: it has none now.`);
  return { ...unbased, ...(isKnown && { base }), holes: holesSeatedIn(holes, frame.id) };
}

function seated(hole: Hole, loops: ReadonlySet<LoopId>, notes: ReadingNotes): Hole {
  const { seat } = hole;
  if (seat.in !== 'loop' || loops.has(seat.loop)) return hole;
  notes.add(`Hole '${hole.id}' sits in a loop that is not there: it is a spare hole now.`);
  return { ...hole, seat: { in: 'spare', key: seat.key } };
}

function related(hole: Hole, holes: ReadonlySet<string>, notes: ReadingNotes): Hole {
  const relations = hole.relations.filter((relation) => holes.has(relation.hole));
  if (relations.length === hole.relations.length) return hole;
  notes.add(`Hole '${hole.id}' is related to a hole that is not there: that was left out.`);
  return { ...hole, relations };
}

function onKnownTees(hole: Hole, teeSets: ReadonlySet<TeeSetId>, notes: ReadingNotes): Hole {
  const known = Object.entries(hole.tees).filter(([teeSet]) => teeSets.has(teeSet));
  if (known.length === Object.keys(hole.tees).length) return hole;
  notes.add(`Hole '${hole.id}' has a tee of a tee set that is not there: that tee was left out.`);
  return { ...hole, tees: Object.fromEntries(known) };
}
