import { type Box, boundsOf, grown } from '@loopwright/geometry';
import type { Green, HoleId, RelationKind, SitePoint } from '@loopwright/model';
import type { HoleFigures } from '../figures.ts';
import { type Leg, legsOf } from './legs.ts';
import type { ClearanceLimits } from './limits.ts';
import { longestTee, type Shot, shotsOf } from './shots.ts';

/** What a hole puts in danger, and the ground its balls may reach: all that a check between two holes needs. */
export interface HoleReach {
  readonly id: HoleId;
  readonly figures: HoleFigures;
  /** Of every tee set. */
  readonly tees: readonly SitePoint[];
  /** From the longest tee: the limits were calibrated on these. Those of shorter players are covered by their fans. */
  readonly landings: readonly SitePoint[];
  readonly green: Green;
  readonly line: readonly SitePoint[];
  readonly legs: readonly Leg[];
  readonly length: number;
  /** Of every tee set's player. */
  readonly shots: readonly Shot[];
  /** Around tees, line and green. */
  readonly box: Box;
  /** Around `box`, as far as any distance limit and its own corridor reach. */
  readonly near: Box;
  /** Around the fans. */
  readonly fanBox: Box;
}

/** A hole made ready for its checks; `undefined` while it has no tee or no green. Cost: a few points per tee set. */
export function holeReach(figures: HoleFigures, limits: ClearanceLimits): HoleReach | undefined {
  const { centreline, green } = figures;
  const legs = legsOf(centreline);
  const last = legs[legs.length - 1];
  if (figures.missing || !green || !last) return undefined;
  const tees = figures.tees.map(({ at }) => at);
  const shots = figures.tees.flatMap((tee) => shotsOf(figures, tee, limits.settings));
  const box = boundsOf([...centreline, ...tees]);
  const widest = figures.corridorStations.reduce((most, { halfWidth }) => Math.max(most, halfWidth), limits.farthest);
  return {
    id: figures.id,
    figures,
    tees,
    landings: longestTee(figures)?.landingAreas ?? [],
    green,
    line: centreline,
    legs,
    length: last.before + last.length,
    shots,
    box,
    near: grown(box, widest),
    fanBox: boundsOf([...centreline, ...shots.flatMap((shot) => fanCorners(shot, limits.outer))]),
  };
}

/** A triangle around a fan. */
function fanCorners({ from, towards, reach }: Shot, tangent: number): readonly SitePoint[] {
  const x = from.x + towards.x * reach;
  const y = from.y + towards.y * reach;
  const aside = reach * tangent;
  return [
    from,
    { x: x - towards.y * aside, y: y + towards.x * aside },
    { x: x + towards.y * aside, y: y - towards.x * aside },
  ];
}

/** Whether either hole states this relation with the other. */
export function states(kind: RelationKind, first: HoleReach, second: HoleReach): boolean {
  return hasRelation(first, kind, second.id) || hasRelation(second, kind, first.id);
}

function hasRelation({ figures }: HoleReach, kind: RelationKind, other: HoleId): boolean {
  for (const relation of figures.relations) if (relation.kind === kind && relation.hole === other) return true;
  return false;
}
