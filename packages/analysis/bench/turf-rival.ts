import type { Feature, Plan, SitePoint } from '@loopwright/model';
import {
  along,
  bearing,
  booleanPointInPolygon,
  buffer,
  distance,
  length,
  lineIntersect,
  lineString,
  point,
  pointToLineDistance,
  polygon,
  sector,
} from '@turf/turf';
import type { Analysis, HoleFigures } from '../src/figures.ts';

/** Metres to a degree at the equator: the library measures on the globe, so the site is laid there. */
const METRES_PER_DEGREE = 111_319.49;

const METRES = { units: 'meters' } as const;

const degrees = ({ x, y }: SitePoint): [number, number] => [x / METRES_PER_DEGREE, y / METRES_PER_DEGREE];

/** The checks sample a line of play about this densely, metres. */
const STEP = 10;

/** For the bench: a hole as the library's own values, with what the analysis has of one: corridor and fans too. */
function turfHole({ centreline, tees, fans }: HoleFigures) {
  const line = lineString(centreline.map(degrees));
  const metres = length(line, METRES);
  const start = point(degrees(centreline[0] ?? { x: 0, y: 0 }));
  const landings = tees.flatMap(({ landingAreas }) => landingAreas.map((at) => point(degrees(at))));
  const sectors = tees.flatMap(({ at }) =>
    fans.map((fan) => {
      const from = point(degrees(at));
      const towards = bearing(from, landings[0] ?? start);
      return sector(from, fan.reach, towards - fan.halfAngleDegrees, towards + fan.halfAngleDegrees, METRES);
    }),
  );
  const stations = Array.from({ length: Math.ceil(metres / STEP) }, (_, step) => along(line, step * STEP, METRES));
  return {
    line,
    metres,
    landings,
    corridor: buffer(line, 46, METRES),
    sectors,
    stations,
    green: point(degrees(centreline[centreline.length - 1] ?? { x: 0, y: 0 })),
    tees: tees.map(({ at }) => point(degrees(at))),
  };
}

export type TurfHole = ReturnType<typeof turfHole>;

/** For the bench: crossing, distances, fans, corridor and spacing of two holes; returns a checksum. */
function turfPair(a: TurfHole, b: TurfHole): number {
  let sum = lineIntersect(a.line, b.line).features.length;
  sum += a.stations.filter((at) => pointToLineDistance(at, b.line, METRES) < 65).length;
  for (const [from, to] of [
    [a, b],
    [b, a],
  ] as const) {
    for (const place of [...to.landings, to.green, ...to.tees]) {
      sum += pointToLineDistance(place, from.line, METRES) < 46 ? 1 : 0;
      sum += from.corridor && booleanPointInPolygon(place, from.corridor) ? 1 : 0;
      sum += from.sectors.filter((fan) => booleanPointInPolygon(place, fan)).length;
      sum += [...from.landings, from.green].filter((other) => distance(place, other, METRES) < 75).length;
    }
  }
  return sum;
}

/** For the bench: a hole and a feature: over it, near it, in its fans; returns a checksum. */
function turfFeature(hole: TurfHole, { geometry }: Feature): number {
  if (geometry.type === 'point') return pointToLineDistance(point(degrees(geometry.at)), hole.line, METRES);
  const rings =
    geometry.type === 'line' ? [geometry.points] : geometry.rings.map((ring) => [...ring, ...ring.slice(0, 1)]);
  let sum = 0;
  for (const ring of rings) {
    const edge = lineString(ring.map(degrees));
    sum += lineIntersect(hole.line, edge).features.length;
    for (const at of [...hole.stations, ...hole.tees]) sum += pointToLineDistance(at, edge, METRES) < 60 ? 1 : 0;
  }
  if (geometry.type === 'line') return sum;
  const area = polygon(rings.map((ring) => ring.map(degrees)));
  return sum + [...hole.landings, hole.green, ...hole.tees].filter((at) => booleanPointInPolygon(at, area)).length;
}

/** For the bench: a walk, what it crosses and whose ground it is in; returns a checksum. */
function turfWalk(path: readonly SitePoint[], holes: readonly TurfHole[]): number {
  if (path.length < 2) return 0;
  const way = lineString(path.map(degrees));
  let sum = length(way, METRES);
  for (const hole of holes) {
    sum += lineIntersect(way, hole.line).features.length;
    sum += hole.landings.filter((landing) => pointToLineDistance(landing, way, METRES) < 50).length;
  }
  return sum;
}

/** The same measures composed from library calls: every hole, pair, feature and walk. */
export function turfFull(plan: Plan, { holes: figures, walks }: Analysis): number {
  const holes = [...figures.values()].map(turfHole);
  let sum = 0;
  holes.forEach((hole, place) => {
    for (const other of holes.slice(place + 1)) sum += turfPair(hole, other);
    for (const feature of plan.site.features) sum += turfFeature(hole, feature);
  });
  for (const { path } of walks) sum += turfWalk(path, holes);
  return sum;
}

/** The same with one hole moved and everything else remembered: that hole, its pairs, features and two walks. */
export function turfMoved(plan: Plan, moved: HoleFigures, others: readonly TurfHole[], analysis: Analysis): number {
  const hole = turfHole(moved);
  let sum = 0;
  for (const other of others) sum += turfPair(hole, other);
  for (const feature of plan.site.features) sum += turfFeature(hole, feature);
  for (const { path } of analysis.walks.slice(0, 2)) sum += turfWalk(path, [hole, ...others]);
  return sum;
}

/** The holes of a plan, made ready. */
export function turfHoles(figures: readonly HoleFigures[]): readonly TurfHole[] {
  return figures.map(turfHole);
}
