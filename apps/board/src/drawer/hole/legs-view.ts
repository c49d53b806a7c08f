import type { HoleFigures } from '@loopwright/analysis';
import type { NamedEdit } from '@loopwright/document';
import { bearingOf, distanceBetween, minus, plus, scaled, unitVector } from '@loopwright/geometry';
import { type Hole, type PartId, pointToMillimetre, type RoutingId, type SitePoint } from '@loopwright/model';

/** One leg of a hole's line of play: typing its length or bearing moves the point it leads to. */
export interface LegView {
  /** The point it leads to. */
  readonly to: PartId;
  readonly words: string;
  /** Metres; radians clockwise from north. */
  readonly length: number;
  readonly bearing: number;
  readonly pinned: boolean;
  readonly from: SitePoint;
  readonly end: SitePoint;
}

/** The shortest leg that can be typed, in metres. */
export const SHORTEST_LEG = 1;
/** The longest, in metres: no hole is near it. */
export const LONGEST_LEG = 3000;

/** From the rear tee by every turn point to the green's middle. Empty while the hole has no line. */
export function toLegs(hole: Hole, figures: HoleFigures | undefined): readonly LegView[] {
  const tee = figures?.tees[0]?.at;
  if (!tee || !hole.green) return [];
  const turns = hole.turnPoints.map(({ id, at }, index) => ({
    part: `turn:${id}` as PartId,
    at,
    words: hole.turnPoints.length > 1 ? `turn point ${index + 1}` : 'turn point',
  }));
  const stops = [...turns, { part: 'green' as PartId, at: hole.green.centre, words: 'green' }];
  return stops.map(({ part, at, words }, index): LegView => {
    const before = stops[index - 1];
    const from = before?.at ?? tee;
    return {
      to: part,
      words: `${before?.words ?? 'tee'} to ${words}`,
      length: distanceBetween(from, at),
      bearing: bearingOf(minus(at, from)),
      pinned: hole.pinned.includes(part),
      from,
      end: at,
    };
  });
}

interface OfHole {
  readonly routing: RoutingId;
  readonly hole: Hole['id'];
}

/** Moves the point a leg leads to, along the leg, so that it has this length. A leg of no length goes north. */
export function legOfLength(of: OfHole, { from, end, to }: LegView, length: number): NamedEdit {
  const towards = unitVector(from, end) ?? { x: 0, y: 1 };
  return { ...of, edit: 'move part', part: to, to: pointToMillimetre(plus(from, scaled(towards, length))) };
}

/** Moves the point a leg leads to about its start, so that it has this bearing. */
export function legOfBearing(of: OfHole, { from, length, to }: LegView, bearing: number): NamedEdit {
  const towards = { x: Math.sin(bearing), y: Math.cos(bearing) };
  return { ...of, edit: 'move part', part: to, to: pointToMillimetre(plus(from, scaled(towards, length))) };
}
