import {
  type Base,
  type Hole,
  holesSeatedIn,
  LIMITS,
  type Loop,
  type LoopFrame,
  type Round,
  type Routing,
  spareHoles,
  type TeeSet,
} from '@loopwright/model';
import { frozen, isSameValue } from '../plain-value.ts';
import { inOrder, isSameIds, keepList } from './in-order.ts';
import type { Read } from './part-reader.ts';
import type { ReadRoots } from './read-roots.ts';
import type { RoutingFrame } from './read-things.ts';

/** What routings speak of that is kept elsewhere: as it is now, and as it was when they were last put together. */
export interface SpokenOf {
  readonly bases: readonly Base[];
  readonly teeSets: readonly TeeSet[];
}

/**
 * Every routing in its order. One whose parts were not touched keeps its identity.
 *
 * A loop whose base was taken away has none, and a hole no tee of a set that was: they are there again when those are.
 */
export function routingsFrom(
  read: ReadRoots,
  before: ReadRoots,
  routings: readonly Routing[],
  { now, old: then }: { readonly now: SpokenOf; readonly old: SpokenOf },
): readonly Routing[] {
  const isUntouched =
    isSameIds(now.bases, then.bases) &&
    isSameIds(now.teeSets, then.teeSets) &&
    read.routings === before.routings &&
    read.loops === before.loops &&
    read.rounds === before.rounds &&
    read.holes === before.holes;
  if (isUntouched) return routings;
  const old = new Map(routings.map((routing) => [routing.id, routing]));
  const there = { bases: idsOf(now.bases), teeSets: idsOf(now.teeSets) };
  const next = inOrder(read.routings, LIMITS.routings).map((frame) =>
    routingFrom(frame, read, there, old.get(frame.id)),
  );
  return keepList(routings, frozen(next));
}

/** The ids of what routings speak of. */
interface There {
  readonly bases: ReadonlySet<string>;
  readonly teeSets: ReadonlySet<string>;
}

const idsOf = (things: readonly { readonly id: string }[]): ReadonlySet<string> => new Set(things.map(({ id }) => id));

function partsOfRouting<T>(groups: ReadonlyMap<string, Read<T>>, routing: string): ReadonlyMap<string, Read<T>> {
  const own = new Map<string, Read<T>>();
  for (const [group, read] of groups) if (group.startsWith(`${routing}/`)) own.set(group, read);
  return own;
}

function routingFrom(frame: RoutingFrame, read: ReadRoots, there: There, old: Routing | undefined): Routing {
  const frames = inOrder(partsOfRouting(read.loops, frame.id), LIMITS.loopsPerRouting);
  const loopIds = new Set(frames.map(({ id }) => id));
  const oldHoles = new Map(old?.holes.map((hole) => [hole.id, hole]));
  const holes = byId(partsOfRouting(read.holes, frame.id)).map((hole) =>
    settled(hole, loopIds, there.teeSets, oldHoles.get(hole.id)),
  );
  const next: Routing = {
    id: frame.id,
    name: frame.name,
    locked: frame.locked,
    loops: keepList(
      old?.loops ?? [],
      frames.map((loop) => loopFrom(based(loop, there.bases), holes, old)),
    ),
    rounds: keepList(
      old?.rounds ?? [],
      inOrder(partsOfRouting(read.rounds, frame.id), LIMITS.roundsPerRouting).map((round) =>
        ofLoops(round, loopIds, old),
      ),
    ),
    holes: keepList(old?.holes ?? [], holes),
    spare: sameOrder(old?.spare ?? [], spareHoles(holes)),
  };
  return old !== undefined && isSameRouting(old, next) ? old : frozen(next);
}

function isSameRouting(old: Routing, next: Routing): boolean {
  return (
    old.name === next.name &&
    old.locked === next.locked &&
    old.loops === next.loops &&
    old.rounds === next.rounds &&
    old.holes === next.holes &&
    old.spare === next.spare
  );
}

function byId(groups: ReadonlyMap<string, Read<Hole>>): readonly Hole[] {
  const holes: Hole[] = [];
  for (const { value } of groups.values()) if (value !== undefined) holes.push(value);
  return holes.sort((a, b) => (a.id < b.id ? -1 : 1)).slice(0, LIMITS.holesPerRouting);
}

/**
 * A hole whose loop is not there is shown as a spare one, so that it is not lost; of its tees, those of sets that are
 * there are shown.
 */
function settled(hole: Hole, loops: ReadonlySet<string>, teeSets: ReadonlySet<string>, old: Hole | undefined): Hole {
  const { seat, tees } = hole;
  const isSeated = seat.in !== 'loop' || loops.has(seat.loop);
  const isOnKnownTees = Object.keys(tees).every((id) => teeSets.has(id));
  if (isSeated && isOnKnownTees) return hole;
  const next: Hole = {
    ...hole,
    seat: isSeated ? seat : { in: 'spare', key: seat.key },
    tees: isOnKnownTees ? tees : Object.fromEntries(Object.entries(tees).filter(([id]) => teeSets.has(id))),
  };
  return old !== undefined && isSameValue(old, next) ? old : frozen(next);
}

function based(frame: LoopFrame, bases: ReadonlySet<string>): LoopFrame {
  const { base, ...unbased } = frame;
  return base === undefined || bases.has(base) ? frame : unbased;
}

/** A round of the loops that are there. */
function ofLoops(round: Round, loops: ReadonlySet<string>, old: Routing | undefined): Round {
  if (round.loops.every((id) => loops.has(id))) return round;
  const next: Round = { ...round, loops: round.loops.filter((id) => loops.has(id)) };
  const before = old?.rounds.find(({ id }) => id === round.id);
  return before !== undefined && isSameValue(before, next) ? before : frozen(next);
}

function loopFrom(frame: LoopFrame, holes: readonly Hole[], old: Routing | undefined): Loop {
  const before = old?.loops.find(({ id }) => id === frame.id);
  const next: Loop = { ...frame, holes: sameOrder(before?.holes ?? [], holesSeatedIn(holes, frame.id)) };
  return before !== undefined && isSameValue(before, next) ? before : frozen(next);
}

function sameOrder(before: readonly string[], after: readonly string[]): readonly string[] {
  return keepList(before, after);
}
