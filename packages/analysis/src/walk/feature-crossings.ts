import {
  boundsOf,
  crossingShares,
  distanceBetween,
  eachEdge,
  pointBetween,
  polylineCrossings,
  ringContains,
} from '@loopwright/geometry';
import type { Feature, FeatureKind, Ring, SitePoint } from '@loopwright/model';
import { pointToMillimetre, toMillimetre } from '@loopwright/model';
import type { FeatureIndex } from '../feature-index.ts';
import type { WalkCrossing } from '../figures.ts';

/** Kinds that are told where a walk crosses them: traffic, a bridge, range balls. */
const TOLD: ReadonlySet<FeatureKind> = new Set(['public road', 'water', 'range']);

/** A feature that a walk meets: where, and how much of it. */
export interface FeatureCrossing {
  readonly feature: Feature;
  /** First place met, in the order walked. */
  readonly at: SitePoint;
  /** Metres of the walk on the feature; 0 over a line. */
  readonly metres: number;
  /** Times the walk meets it. */
  readonly times: number;
}

/**
 * What a walk crosses of roads, water and the range: each feature once, in the plan's order.
 * Buffers are not counted: people on foot are no ball.
 */
export function featureCrossings(path: readonly SitePoint[], features: FeatureIndex): readonly FeatureCrossing[] {
  if (path.length < 2) return [];
  return features.near(boundsOf(path)).flatMap((feature) => {
    if (feature.allows.walk || !TOLD.has(feature.kind)) return [];
    const { geometry } = feature;
    if (geometry.type === 'point') return [];
    return geometry.type === 'line'
      ? overLine(path, feature, geometry.points)
      : overArea(path, feature, geometry.rings);
  });
}

function overLine(
  path: readonly SitePoint[],
  feature: Feature,
  line: readonly SitePoint[],
): readonly FeatureCrossing[] {
  const crossings = polylineCrossings(path, line);
  const first = crossings[0];
  return first ? [{ feature, at: pointToMillimetre(first.at), metres: 0, times: crossings.length }] : [];
}

/** The walk is cut at the area's edges; the pieces whose middle lies inside, holes left out, are on it. */
function overArea(path: readonly SitePoint[], feature: Feature, rings: readonly Ring[]): readonly FeatureCrossing[] {
  let metres = 0;
  let times = 0;
  let at: SitePoint | undefined;
  let wasInside = false;
  for (let i = 1; i < path.length; i++) {
    const a = path[i - 1];
    const b = path[i];
    if (!a || !b) continue;
    const cuts = cutsOf(a, b, rings);
    for (let j = 1; j < cuts.length; j++) {
      const from = pointBetween(a, b, cuts[j - 1] ?? 0);
      const to = pointBetween(a, b, cuts[j] ?? 1);
      const inside = isOn(pointBetween(from, to, 0.5), rings);
      if (inside) metres += distanceBetween(from, to);
      if (inside && !wasInside) times += 1;
      if (inside) at ??= from;
      wasInside = inside;
    }
  }
  return at ? [{ feature, at: pointToMillimetre(at), metres: toMillimetre(metres), times }] : [];
}

function cutsOf(a: SitePoint, b: SitePoint, rings: readonly Ring[]): readonly number[] {
  const cuts = [0, 1];
  for (const ring of rings) {
    eachEdge(ring, (c, d) => {
      const shares = crossingShares(a, b, c, d);
      if (shares) cuts.push(shares.first);
    });
  }
  return cuts.sort((one, two) => one - two);
}

function isOn(p: SitePoint, [outer, ...inner]: readonly Ring[]): boolean {
  return outer !== undefined && ringContains(outer, p) && !inner.some((ring) => ringContains(ring, p));
}

/** The same, as the walk's figures list it. */
export function asCrossing({ feature, at }: FeatureCrossing): WalkCrossing {
  return { at, what: { kind: 'feature', feature: feature.id } };
}
