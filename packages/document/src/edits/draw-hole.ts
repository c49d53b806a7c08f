import {
  type HoleId,
  isId,
  LIMITS,
  orderKeyAt,
  parseGreen,
  parsePoint,
  type Routing,
  type TurnPoint,
} from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import type { PlaceInLoop } from './hole-edit.ts';
import { cellsOfHole, isUnused } from './hole-parts.ts';
import { routingOf, writeOfHole } from './open-hole.ts';
import { seatNewInLoop, seatNewInTray } from './seat-hole.ts';

/**
 * Puts a new hole on the plan, as far as it is drawn. What is drawn is never lost for its place: when the hole it
 * should follow was taken out meanwhile it sits last in that loop, and without the loop it is a spare one.
 *
 * @returns `gone` without the routing; `nothing` when the routing is locked or full, when there is a hole of that id,
 *   when nothing is drawn yet or more turns than a hole can have
 * @throws RangeError if the id or a place could not be read again: the caller's bug
 */
export function drawHole(edit: EditNamed<'draw hole'>, reading: Reading): EditWrites {
  const routing = routingOf(reading, edit.routing);
  if (!routing) return 'gone';
  const existing = routing.holes.find(({ id }) => id === edit.hole);
  if (routing.locked || (existing && existing.seat.in !== 'removed')) return 'nothing';
  if (!existing && routing.holes.length >= LIMITS.holesPerRouting) return 'nothing';
  const drawn = drawnParts(edit, reading);
  if (drawn.length === 0 || edit.turnPoints.length > LIMITS.turnPointsPerHole) return 'nothing';
  const parts = cellsOfHole(reading, routing.id, edit.hole);
  const write = (part: string, value: unknown) => writeOfHole(routing.id, edit.hole, part, value);
  // Over a hole that was taken off the plan: nothing of it shows through.
  const cleared = isUnused(parts) ? [] : [...parts.keys()].filter((part) => part !== 'seat');
  const kept = new Set(drawn.map(([part]) => part));
  return [
    ...cleared.filter((part) => !kept.has(part)).map((part) => write(part, null)),
    ...drawn.map(([part, value]) => write(part, value)),
    ...seatFor(routing, edit.hole, edit.seat),
  ];
}

function drawnParts(edit: EditNamed<'draw hole'>, reading: Reading): readonly (readonly [string, unknown])[] {
  if (!isId(edit.hole)) throw new RangeError('draw hole: that is no id');
  const known = new Set(reading.plan.teeSets.map(({ id }) => id));
  const tees = Object.entries(edit.tees).filter(([teeSet]) => known.has(teeSet));
  const green = edit.green && parseGreen(edit.green);
  const { centre, ...shape } = green ?? {};
  const parts = [
    ...tees.map(([teeSet, at]) => [`tee:${teeSet}`, parsePoint(at)] as const),
    ...edit.turnPoints.map((turn, place) => [`turn:${turn.id}`, placedTurn(turn, place)] as const),
    ...(edit.green ? [['green', centre] as const, ['green-shape', shape] as const] : []),
  ];
  if (parts.some(([, value]) => value === undefined)) throw new RangeError('draw hole: a place cannot be read');
  return parts;
}

function placedTurn({ id, at }: TurnPoint, place: number): unknown {
  const point = parsePoint(at);
  return point && isId(id) ? { ...point, order: orderKeyAt(place) } : undefined;
}

function seatFor(routing: Routing, hole: HoleId, seat: PlaceInLoop | 'spare'): readonly Write[] {
  const loop = seat === 'spare' ? undefined : routing.loops.find(({ id }) => id === seat.loop);
  if (seat === 'spare' || !loop) return seatNewInTray(routing, hole);
  const isThere = seat.after === 'first' || loop.holes.includes(seat.after);
  return seatNewInLoop(routing, hole, loop, isThere ? seat.after : (loop.holes.at(-1) ?? 'first'));
}
