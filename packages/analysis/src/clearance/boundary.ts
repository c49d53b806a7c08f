import { boundsOf, distanceBetween, grown, pointBetween, segmentsApart, stretch } from '@loopwright/geometry';
import { type SitePoint, toMillimetre } from '@loopwright/model';
import type { Finding } from '../figures.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import { farthestOf, type Tier, tiersOf, tierUnder } from '../findings/tier.ts';
import { betweenPlaces, clearanceFinding } from './clearance-finding.ts';
import type { Closest } from './closest.ts';
import type { HoleReach } from './hole-reach.ts';
import type { ClearanceLimits } from './limits.ts';
import { type Edge, nearestEdge, type SiteEdges } from './site-edges.ts';

/** How exactly the place furthest outside is sought, metres. */
const FINE = 0.1;

/**
 * A hole against the edge of the site: line of play (both ends left out), landing areas, green centre, tees.
 *
 * Measured: metres to the edge, below 0 outside. The line's own tolerance is taken off each limit, so that an edge
 * known to 10 m raises nothing that its true place might not.
 *
 * Cost: the edges near the hole, found by index, times the hole's legs.
 * Source: limits calibrated on 25 mapped boundaries.
 */
export function checkHoleBoundary(hole: HoleReach, edges: SiteEdges, limits: ClearanceLimits): readonly Finding[] {
  if (edges.all.length === 0) return [];
  const { settings } = limits;
  const tiers = {
    line: tiersOf('edge-line', settings),
    landing: tiersOf('edge-landing', settings),
    green: tiersOf('edge-green', settings),
    tee: tiersOf('edge-tee', settings),
  };
  const farthest = Math.max(...Object.values(tiers).map(farthestOf));
  const near = edges.near(grown(boundsOf([...hole.line, ...hole.tees]), farthest));
  // With no edge near, the whole hole is on one side.
  if (near.length === 0 && edges.contains(hole.green.centre)) return [];
  const site = { edges, near, farthest };
  return [
    ...edgeFinding('edge-line', hole, lineToEdge(hole, site, settings['edge-line-ends']), tiers.line, edges.tolerance),
    ...edgeFinding('edge-landing', hole, placesToEdge(hole.landings, site), tiers.landing, edges.tolerance),
    ...edgeFinding('edge-green', hole, placesToEdge([hole.green.centre], site), tiers.green, edges.tolerance),
    ...edgeFinding('edge-tee', hole, placesToEdge(hole.tees, site), tiers.tee, edges.tolerance),
  ];
}

interface NearSite {
  readonly edges: SiteEdges;
  /** Every edge within `farthest` metres of the hole. */
  readonly near: readonly Edge[];
  readonly farthest: number;
}

/** From a place to the edge of the site, below 0 outside. */
function toEdge(place: SitePoint, { edges, near, farthest }: NearSite): Closest | undefined {
  const isInside = edges.contains(place);
  let edge = nearestEdge(place, near);
  // Far outside, an edge that is not near the hole may still be the nearest.
  if (!isInside && (!edge || edge.distance > farthest)) edge = nearestEdge(place, edges.all);
  return edge && { distance: isInside ? edge.distance : -edge.distance, first: place, second: edge.at };
}

function placesToEdge(places: readonly SitePoint[], site: NearSite): Closest | undefined {
  let least: Closest | undefined;
  for (const place of places) {
    const closest = toEdge(place, site);
    if (closest && (!least || closest.distance < least.distance)) least = closest;
  }
  return least;
}

function lineToEdge(hole: HoleReach, site: NearSite, ends: number): Closest | undefined {
  if (hole.length <= 2 * ends) return undefined;
  const line = stretch(hole.line, ends, hole.length - ends);
  const outside = furthestOutside(line, site);
  if (outside) return outside;
  let least: Closest | undefined;
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1];
    const b = line[i];
    if (!a || !b) continue;
    for (const edge of site.near) {
      const apart = segmentsApart(a, b, edge.a, edge.b);
      if (!least || apart.distance < least.distance) least = apart;
    }
  }
  return least;
}

/**
 * The place of a line that is furthest outside the site, if any is: halved for as long as a piece may hold one further
 * out, since no two places a metre apart can differ by more than a metre in their distance to the edge.
 */
function furthestOutside(line: readonly SitePoint[], site: NearSite): Closest | undefined {
  let worst: Closest | undefined;
  const outsideAt = (place: SitePoint): number => {
    const closest = toEdge(place, site);
    if (!closest) return Number.NEGATIVE_INFINITY;
    if (closest.distance < 0 && (!worst || closest.distance < worst.distance)) worst = closest;
    return -closest.distance;
  };
  const halve = (a: SitePoint, outA: number, b: SitePoint, outB: number): void => {
    const length = distanceBetween(a, b);
    const atMost = (outA + outB + length) / 2;
    if (length < FINE || atMost <= (worst ? FINE - worst.distance : 0)) return;
    const middle = pointBetween(a, b, 0.5);
    const out = outsideAt(middle);
    halve(a, outA, middle, out);
    halve(middle, out, b, outB);
  };
  const outs = line.map(outsideAt);
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1];
    const b = line[i];
    const outA = outs[i - 1];
    const outB = outs[i];
    if (a && b && outA !== undefined && outB !== undefined) halve(a, outA, b, outB);
  }
  return worst;
}

function edgeFinding(
  code: FindingCode,
  hole: HoleReach,
  closest: Closest | undefined,
  tiers: readonly Tier[],
  tolerance: number,
): readonly Finding[] {
  if (!closest) return [];
  const measured = toMillimetre(closest.distance);
  const tier = tierUnder(tiers, measured + tolerance);
  if (!tier) return [];
  return [
    clearanceFinding({
      code,
      holes: [hole.id],
      measured,
      tier: { ...tier, limit: tier.limit - tolerance },
      place: betweenPlaces(closest.first, closest.second),
      ...(tolerance > 0 && { detail: { tolerance } }),
    }),
  ];
}
