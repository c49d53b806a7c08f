import { boundsOf, grown, pointAlong, polylineLength, segmentsApart, stretch } from '@loopwright/geometry';
import { type SitePoint, toMillimetre } from '@loopwright/model';
import type { Finding } from '../figures.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import { farthestOf, type Tier, tiersOf, tierUnder } from '../findings/tier.ts';
import { betweenPlaces, clearanceFinding } from './clearance-finding.ts';
import type { Closest } from './closest.ts';
import type { HoleReach } from './hole-reach.ts';
import type { ClearanceLimits } from './limits.ts';
import { type Edge, nearestEdge, type SiteEdges } from './site-edges.ts';

/** Metres between the places where a line that leaves the site is tried. */
const STEP = 10;

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
  const site = { edges, near: near.length > 0 ? near : edges.all };
  return [
    ...edgeFinding('edge-line', hole, lineToEdge(hole, site, settings['edge-line-ends']), tiers.line, edges.tolerance),
    ...edgeFinding('edge-landing', hole, placesToEdge(hole.landings, site), tiers.landing, edges.tolerance),
    ...edgeFinding('edge-green', hole, placesToEdge([hole.green.centre], site), tiers.green, edges.tolerance),
    ...edgeFinding('edge-tee', hole, placesToEdge(hole.tees, site), tiers.tee, edges.tolerance),
  ];
}

interface NearSite {
  readonly edges: SiteEdges;
  readonly near: readonly Edge[];
}

function placesToEdge(places: readonly SitePoint[], { edges, near }: NearSite): Closest | undefined {
  let least: Closest | undefined;
  for (const place of places) {
    const edge = nearestEdge(place, near);
    if (!edge) continue;
    const distance = edges.contains(place) ? edge.distance : -edge.distance;
    if (!least || distance < least.distance) least = { distance, first: place, second: edge.at };
  }
  return least;
}

function lineToEdge(hole: HoleReach, site: NearSite, ends: number): Closest | undefined {
  if (hole.length <= 2 * ends) return undefined;
  const line = stretch(hole.line, ends, hole.length - ends);
  const outside = placesToEdge(steps(line), site);
  if (outside && outside.distance < 0) return outside;
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

function steps(line: readonly SitePoint[]): readonly SitePoint[] {
  const length = polylineLength(line);
  const count = Math.ceil(length / STEP);
  return Array.from({ length: count + 1 }, (_, i) => pointAlong(line, (length * i) / count));
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
