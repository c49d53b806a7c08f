import { distanceBetween, plus, scaled, unitVector } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';

/** A rod on the ground: legs of fixed length joined end to end, from the pin on. */
export interface Rod {
  readonly pin: SitePoint;
  /** Metres, from the pin. */
  readonly legs: readonly number[];
  /** The direction of each leg, of length 1. */
  readonly ways: readonly SitePoint[];
}

/** Which end of the hole the pin is. */
export type PinnedEnd = 'tee' | 'green';

const NORTH: SitePoint = { x: 0, y: 1 };

/** A straight rod from its pin. */
export function straightRod(pin: SitePoint, legs: readonly number[], way: SitePoint = NORTH): Rod {
  return { pin, legs, ways: legs.map(() => way) };
}

/** The pin, the joints and the far end, in order. */
export function jointsOf({ pin, legs, ways }: Rod): readonly SitePoint[] {
  const joints = [pin];
  legs.forEach((leg, index) => {
    const from = joints[index] ?? pin;
    joints.push(plus(from, scaled(ways[index] ?? NORTH, leg)));
  });
  return joints;
}

/**
 * The rod swung about one of its joints, so that the leg after it points that way. What lies beyond is carried along as
 * it is bent; what lies before stays. About the pin (0) the whole rod turns.
 *
 * By a rotation without trigonometry: the turn from one unit vector to another is their product as complex numbers.
 */
export function swung(rod: Rod, joint: number, way: SitePoint): Rod {
  const was = rod.ways[joint];
  if (!was) return rod;
  const turn = { x: was.x * way.x + was.y * way.y, y: was.x * way.y - was.y * way.x };
  const ways = rod.ways.map((each, index) => {
    if (index < joint) return each;
    return index === joint ? way : turned(each, turn);
  });
  return { ...rod, ways };
}

/** Turned, and made length 1 again, so that a rod swung all day keeps its legs. */
function turned(way: SitePoint, turn: SitePoint): SitePoint {
  const to = { x: way.x * turn.x - way.y * turn.y, y: way.x * turn.y + way.y * turn.x };
  return unitVector({ x: 0, y: 0 }, to) ?? way;
}

/** The rod swung about a joint until its leg, or a further joint of it, lies in the direction of a place. */
export function swungTowards(rod: Rod, joint: number, further: number, at: SitePoint): Rod {
  const joints = jointsOf(rod);
  const [about, end] = [joints[joint], joints[further]];
  const [was, will, leg] = [about && end && unitVector(about, end), about && unitVector(about, at), rod.ways[joint]];
  if (!was || !will || !leg) return rod;
  const turn = { x: was.x * will.x + was.y * will.y, y: was.x * will.y - was.y * will.x };
  return swung(rod, joint, turned(leg, turn));
}

/** The rod with other legs; it keeps its bends, and further legs go straight on. */
export function withLegs(rod: Rod, legs: readonly number[]): Rod {
  return { ...rod, legs, ways: legs.map((_, index) => rod.ways[index] ?? rod.ways.at(-1) ?? NORTH) };
}

/** The joint a press takes hold of: the nearest within reach, the far ones first. 0 is the pin. */
export function jointAt(rod: Rod, at: SitePoint, reach: number): number | undefined {
  const joints = jointsOf(rod);
  let best: { readonly joint: number; readonly distance: number } | undefined;
  for (const [joint, place] of joints.entries()) {
    const distance = distanceBetween(place, at);
    if (distance <= reach && (!best || distance <= best.distance)) best = { joint, distance };
  }
  return best?.joint;
}
