import {
  type Hole,
  holesSeatedIn,
  LIMITS,
  type Loop,
  type LoopFrame,
  type Routing,
  spareHoles,
} from '@loopwright/model';
import { frozen, isSameValue } from '../plain-value.ts';
import { inOrder, keepList } from './in-order.ts';
import type { Read } from './part-reader.ts';
import type { ReadRoots } from './read-roots.ts';
import type { RoutingFrame } from './read-things.ts';

/** Every routing in its order. One whose parts were not touched keeps its identity. */
export function routingsFrom(read: ReadRoots, before: ReadRoots, routings: readonly Routing[]): readonly Routing[] {
  const isUntouched =
    read.routings === before.routings &&
    read.loops === before.loops &&
    read.rounds === before.rounds &&
    read.holes === before.holes;
  if (isUntouched) return routings;
  const old = new Map(routings.map((routing) => [routing.id, routing]));
  const next = inOrder(read.routings, LIMITS.routings).map((frame) => routingFrom(frame, read, old.get(frame.id)));
  return keepList(routings, frozen(next));
}

function partsOfRouting<T>(groups: ReadonlyMap<string, Read<T>>, routing: string): ReadonlyMap<string, Read<T>> {
  const own = new Map<string, Read<T>>();
  for (const [group, read] of groups) if (group.startsWith(`${routing}/`)) own.set(group, read);
  return own;
}

function routingFrom(frame: RoutingFrame, read: ReadRoots, old: Routing | undefined): Routing {
  const frames = inOrder(partsOfRouting(read.loops, frame.id), LIMITS.loopsPerRouting);
  const loopIds = new Set(frames.map(({ id }) => id));
  const oldHoles = new Map(old?.holes.map((hole) => [hole.id, hole]));
  const holes = byId(partsOfRouting(read.holes, frame.id)).map((hole) => seated(hole, loopIds, oldHoles.get(hole.id)));
  const next: Routing = {
    id: frame.id,
    name: frame.name,
    locked: frame.locked,
    loops: keepList(
      old?.loops ?? [],
      frames.map((loop) => loopFrom(loop, holes, old)),
    ),
    rounds: keepList(old?.rounds ?? [], inOrder(partsOfRouting(read.rounds, frame.id), LIMITS.roundsPerRouting)),
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

/** A hole whose loop is not there is shown as a spare one, so that it is not lost. */
function seated(hole: Hole, loops: ReadonlySet<string>, old: Hole | undefined): Hole {
  const { seat } = hole;
  if (seat.in !== 'loop' || loops.has(seat.loop)) return hole;
  const spare: Hole = { ...hole, seat: { in: 'spare', key: seat.key } };
  return old !== undefined && isSameValue(old, spare) ? old : frozen(spare);
}

function loopFrom(frame: LoopFrame, holes: readonly Hole[], old: Routing | undefined): Loop {
  const before = old?.loops.find(({ id }) => id === frame.id);
  const next: Loop = { ...frame, holes: sameOrder(before?.holes ?? [], holesSeatedIn(holes, frame.id)) };
  return before !== undefined && isSameValue(before, next) ? before : frozen(next);
}

function sameOrder(before: readonly string[], after: readonly string[]): readonly string[] {
  return keepList(before, after);
}
