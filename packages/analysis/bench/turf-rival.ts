import type { Feature, Plan, SitePoint } from '@loopwright/model';
import {
  along,
  bbox,
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
} from '@turf/turf';
import type { Analysis, HoleFigures, ShotFan } from '../src/figures.ts';

/** Metres to a degree at the equator: the library measures on the globe, so the site is laid there. */
const METRES_PER_DEGREE = 111_319.49;

/** On so small a site the plane is exact enough, and the library's quicker way to a line. */
const METRES = { units: 'meters', method: 'planar' } as const;

const degrees = ({ x, y }: SitePoint): [number, number] => [x / METRES_PER_DEGREE, y / METRES_PER_DEGREE];

/** The checks sample a line of play about this densely, and limits reach about this far, metres. */
const STEP = 10;
const FARTHEST = 80;

type TurfPoint = ReturnType<typeof point>;
type TurfLine = ReturnType<typeof lineString>;
type Box = readonly [west: number, south: number, east: number, north: number];

/** What any engineer writes first: things whose boxes are further apart than any limit are passed over. */
function isNear(a: Box, b: Box, metres: number): boolean {
  const by = metres / METRES_PER_DEGREE;
  return a[0] - by <= b[2] && b[0] - by <= a[2] && a[1] - by <= b[3] && b[1] - by <= a[3];
}

function placesEvery(metres: number, line: TurfLine): readonly TurfPoint[] {
  const steps = Math.ceil(length(line, METRES) / metres);
  return Array.from({ length: steps }, (_, step) => along(line, step * metres, METRES));
}

const boxOf = (of: Parameters<typeof bbox>[0]): Box => {
  const [west, south, east, north] = bbox(of);
  return [west, south, east, north];
};

/** Every tee set's shots: the longest tee's as they are, those of other tees from where they stand. */
function turfShots({ fans, tees }: HoleFigures) {
  const each = fans.filter(({ severity }) => severity === 'look');
  return tees.flatMap(({ at }) => each.map((fan) => turfShot(fan, fan.shot === 'tee shot' ? at : fan.from)));
}

function turfShot({ towards, reach }: ShotFan, at: SitePoint) {
  const from = point(degrees(at));
  const aim = point(degrees({ x: at.x + towards.x * reach, y: at.y + towards.y * reach }));
  return { from, heading: bearing(from, aim), reach };
}

/** For the bench: a hole as the library's own values, with what the analysis has of one: length, corridor, shots. */
function turfHole(figures: HoleFigures) {
  const { centreline, tees } = figures;
  const line = lineString(centreline.map(degrees));
  return {
    line,
    metres: length(line, METRES),
    box: boxOf(line),
    landings: (tees[0]?.landingAreas ?? []).map((at) => point(degrees(at))),
    corridor: buffer(line, 46, METRES),
    shots: turfShots(figures),
    stations: placesEvery(STEP, line),
    green: point(degrees(centreline[centreline.length - 1] ?? { x: 0, y: 0 })),
    tees: tees.map(({ at }) => point(degrees(at))),
  };
}

export type TurfHole = ReturnType<typeof turfHole>;

/** Inside the inner or the outer angle: by bearing, and by distance only where that says yes. */
function inFan({ from, heading, reach }: TurfHole['shots'][number], place: TurfPoint): number {
  const off = Math.abs(((bearing(from, place) - heading + 540) % 360) - 180);
  if (off > 15 || distance(from, place, METRES) > reach) return 0;
  return off > 10 ? 1 : 2;
}

/** For the bench: crossing, distances, fans, corridor and spacing of two holes; returns a checksum. */
function turfPair(a: TurfHole, b: TurfHole): number {
  let sum = 0;
  if (isNear(a.box, b.box, FARTHEST)) {
    sum += lineIntersect(a.line, b.line).features.length;
    sum += a.stations.filter((at) => pointToLineDistance(at, b.line, METRES) < 65).length;
    sum += turfDistances(a, b) + turfDistances(b, a);
  }
  for (const [from, to] of [
    [a, b],
    [b, a],
  ] as const) {
    // No fan reaches further than the drive and its roll.
    if (!isNear(from.box, to.box, 250)) continue;
    for (const place of [...to.landings, to.green, ...to.tees]) {
      for (const shot of from.shots) sum += inFan(shot, place);
    }
  }
  return sum;
}

/** One hole's landing areas and green to another's tees, green and landing areas; what lies by its line. */
function turfDistances(from: TurfHole, to: TurfHole): number {
  let sum = 0;
  for (const place of [...to.landings, to.green, ...to.tees]) {
    sum += pointToLineDistance(place, from.line, METRES) < 46 ? 1 : 0;
    sum += [...from.landings, from.green].filter((other) => distance(place, other, METRES) < 75).length;
  }
  return sum;
}

const PUBLIC: readonly Feature['kind'][] = ['public road', 'public path', 'neighbour'];

/** For the bench: the features as the library's own values, made once. */
function turfFeature({ kind, geometry }: Feature) {
  const isPublic = PUBLIC.includes(kind);
  if (geometry.type === 'point') {
    const at = point(degrees(geometry.at));
    return { kind: 'point', at, box: boxOf(at), places: [at], isPublic } as const;
  }
  const rings =
    geometry.type === 'line' ? [geometry.points] : geometry.rings.map((ring) => [...ring, ...ring.slice(0, 1)]);
  const edges = rings.map((ring) => lineString(ring.map(degrees)));
  const [outer] = edges;
  const box: Box = outer ? boxOf(outer) : [0, 0, 0, 0];
  const places = edges.flatMap((edge) => placesEvery(STEP, edge));
  if (geometry.type === 'line') return { kind: 'line', edges, box, places, isPublic } as const;
  return { kind: 'area', edges, box, places, isPublic, area: polygon(rings.map((ring) => ring.map(degrees))) } as const;
}

export type TurfFeature = ReturnType<typeof turfFeature>;

export function turfFeatures({ site }: Plan): readonly TurfFeature[] {
  return site.features.map(turfFeature);
}

/** For the bench: a hole and a feature: over it, near it, in its fans; returns a checksum. */
function turfOnFeature(hole: TurfHole, feature: TurfFeature): number {
  const inFans = feature.isPublic && isNear(hole.box, feature.box, 250) ? turfInFans(hole, feature.places) : 0;
  return inFans + (isNear(hole.box, feature.box, FARTHEST) ? turfBesideFeature(hole, feature) : 0);
}

function turfInFans({ shots }: TurfHole, places: readonly TurfPoint[]): number {
  let sum = 0;
  for (const place of places) for (const shot of shots) sum += inFan(shot, place);
  return sum;
}

function turfBesideFeature(hole: TurfHole, feature: TurfFeature): number {
  if (feature.kind === 'point') return pointToLineDistance(feature.at, hole.line, METRES) < 60 ? 1 : 0;
  let sum = 0;
  const places = [...hole.landings, hole.green, ...hole.tees];
  for (const edge of feature.edges) {
    sum += lineIntersect(hole.line, edge).features.length;
    for (const at of [...hole.stations, ...places]) sum += pointToLineDistance(at, edge, METRES) < 60 ? 1 : 0;
  }
  if (feature.kind === 'line') return sum;
  return sum + places.filter((at) => booleanPointInPolygon(at, feature.area)).length;
}

/** For the bench: the edge of the site, made once. */
export function turfBoundary({ site }: Plan) {
  const rings = (site.boundary?.outlines ?? []).map((ring) => [...ring, ...ring.slice(0, 1)].map(degrees));
  return { edges: rings.map((ring) => lineString(ring)), land: polygon(rings) };
}

/** For the bench: line, landing areas, green and tees to the edge of the site; returns a checksum. */
function turfToEdge(hole: TurfHole, { edges, land }: ReturnType<typeof turfBoundary>): number {
  let sum = 0;
  for (const place of [...hole.stations, ...hole.landings, hole.green, ...hole.tees]) {
    for (const edge of edges) sum += pointToLineDistance(place, edge, METRES) < 46 ? 1 : 0;
    sum += booleanPointInPolygon(place, land) ? 0 : 1;
  }
  return sum;
}

function turfWay(path: readonly SitePoint[]) {
  const line = lineString(path.map(degrees));
  return { line, box: boxOf(line), metres: length(line, METRES), places: placesEvery(5, line) };
}

type TurfWay = ReturnType<typeof turfWay>;

/** For the bench: a walk and a hole: crossed, passed near, inside its fans; returns a checksum. */
function turfPast(way: TurfWay, hole: TurfHole): number {
  let sum = isNear(way.box, hole.box, 250) ? turfInFans(hole, way.places) : 0;
  if (!isNear(way.box, hole.box, 50)) return sum;
  sum += lineIntersect(way.line, hole.line).features.length;
  return sum + hole.landings.filter((landing) => pointToLineDistance(landing, way.line, METRES) < 50).length;
}

/** For the bench: a walk and the features it goes over; returns a checksum. */
function turfOver(way: TurfWay, features: readonly TurfFeature[]): number {
  let sum = way.metres;
  for (const feature of features) {
    if (feature.kind === 'point' || !isNear(way.box, feature.box, 0)) continue;
    for (const edge of feature.edges) sum += lineIntersect(way.line, edge).features.length;
  }
  return sum;
}

const waysOf = ({ walks }: Analysis) => walks.flatMap(({ path }) => (path.length < 2 ? [] : [turfWay(path)]));

/** The same measures composed from library calls: every hole, pair, feature, edge and walk. */
export function turfFull(plan: Plan, analysis: Analysis): number {
  const holes = [...analysis.holes.values()].map(turfHole);
  const features = plan.site.features.map(turfFeature);
  const boundary = turfBoundary(plan);
  let sum = 0;
  holes.forEach((hole, place) => {
    for (const other of holes.slice(place + 1)) sum += turfPair(hole, other);
    for (const feature of features) sum += turfOnFeature(hole, feature);
    sum += turfToEdge(hole, boundary);
  });
  for (const way of waysOf(analysis)) {
    sum += turfOver(way, features);
    for (const hole of holes) sum += turfPast(way, hole);
  }
  return sum;
}

/** For the bench: everything that does not move, made once. */
export function turfMemory(plan: Plan, analysis: Analysis) {
  return {
    holes: [...analysis.holes.values()].map(turfHole),
    ways: waysOf(analysis),
    features: plan.site.features.map(turfFeature),
    boundary: turfBoundary(plan),
  };
}

/**
 * The same with one hole moved and everything else remembered: that hole, its pairs, features and edge, the walk to its
 * tee and the walk from its green with all they meet, and every other walk past it.
 */
export function turfMoved(figures: HoleFigures, place: number, memory: ReturnType<typeof turfMemory>): number {
  const { holes, ways, features, boundary } = memory;
  const hole = turfHole(figures);
  let sum = turfToEdge(hole, boundary);
  for (const other of holes) if (other !== holes[place]) sum += turfPair(hole, other);
  for (const feature of features) sum += turfOnFeature(hole, feature);
  ways.forEach((way, walk) => {
    sum += turfPast(way, hole);
    if (walk !== place && walk !== place + 1) return;
    sum += turfOver(way, features);
    for (const other of holes) sum += turfPast(way, other);
  });
  return sum;
}
