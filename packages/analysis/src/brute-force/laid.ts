import type { Hole, HoleId, Plan, SitePoint, TeeSet } from '@loopwright/model';
import type { Analysis } from '../figures.ts';
import { apart, lengthOf, nearest, placeAlong, type Sample, sampled } from './lines.ts';

/** Yards of the Course Rating System's model players: tee shot, and what they reach in two less that. */
const SHOTS = {
  'scratch man': [250, 220],
  'bogey man': [200, 170],
  'scratch woman': [210, 190],
  'bogey woman': [150, 130],
} as const;
const YARD = 0.9144;

/** A landing area nearer to its green than this is left to the green. */
const LEFT_TO_GREEN = 60;
/** Roll on flat ground, and past the green, as the fans are defined. */
const ROLL = 18;
const PAST_GREEN = 30;
const CUT_GAIN = 20;

/** For tests: a sector of ground, by angles. */
export interface BruteFan {
  readonly from: SitePoint;
  readonly aim: SitePoint;
  readonly reach: number;
}

/** For tests: a hole worked out from the definitions alone. */
export interface Laid {
  readonly hole: HoleId;
  readonly line: readonly SitePoint[];
  readonly samples: readonly Sample[];
  readonly length: number;
  readonly tees: readonly SitePoint[];
  readonly green: SitePoint;
  readonly landings: readonly SitePoint[];
  readonly fans: readonly BruteFan[];
}

/**
 * Where full shots finish: par less three before the approach, and more while the green is out of reach, for the
 * scratch players a little further than a full shot. One that finishes close to the green is left to it: a tee shot
 * then counts as played to the nearest turn point.
 */
function landingsOf(line: readonly SitePoint[], player: TeeSet['player'], par: number): readonly SitePoint[] {
  const length = lengthOf(line);
  const places: SitePoint[] = [];
  let at = 0;
  for (let shot = 0; shot < 8; shot++) {
    const next = SHOTS[player][shot === 0 ? 0 : 1] * YARD;
    const stretch = shot >= par - 3 && player.startsWith('scratch') ? 1.12 : 1;
    if (length - at <= next * stretch) break;
    at += next;
    const place = placeAlong(line, at);
    if (place && length - at >= LEFT_TO_GREEN) places.push(place);
    else if (place && shot === 0) places.push(...nearestOf(place, line.slice(1, -1)));
  }
  return places;
}

function nearestOf(to: SitePoint, points: readonly SitePoint[]): readonly SitePoint[] {
  return [...points].sort((a, b) => apart(a, to) - apart(b, to)).slice(0, 1);
}

/**
 * For tests: the holes in play, from points alone. Where a tee was only proposed, its place is taken from the
 * figures: a proposal is a choice, not a measurement.
 */
export function layOut(plan: Plan, analysis: Analysis): readonly Laid[] {
  const routing = plan.routings[0];
  const played = new Set(routing?.loops.flatMap(({ holes }) => holes));
  return (routing?.holes ?? []).filter(({ id }) => played.has(id)).map((hole) => layHole(hole, plan, analysis));
}

function layHole(hole: Hole, plan: Plan, analysis: Analysis): Laid {
  const green = hole.green?.centre;
  const first = plan.teeSets[0];
  const back = first && hole.tees[first.id];
  if (!green || !back || !first) throw new RangeError('layHole: needs a back tee and a green');
  const turns = hole.turnPoints.map(({ at }) => at);
  const line = [back, ...turns, green];
  const samples = sampled(line);
  // A turn point is passed when the tee stands level with it or beyond.
  const lineFrom = (tee: SitePoint) => {
    const level = nearest(tee, samples).along;
    return [tee, ...turns.filter((_, place) => lengthOf(line.slice(0, place + 2)) > level), green];
  };
  const figures = analysis.holes.get(hole.id);
  const tees = plan.teeSets.map(
    (set) => hole.tees[set.id] ?? figures?.tees.find(({ teeSet }) => teeSet === set.id)?.at ?? back,
  );
  const parFor = (player: TeeSet['player']) => figures?.par[player.endsWith('woman') ? 'women' : 'men'] ?? 0;
  return {
    hole: hole.id,
    line,
    samples,
    length: lengthOf(line),
    tees,
    green,
    landings: landingsOf(line, first.player, parFor(first.player)),
    fans: plan.teeSets.flatMap(({ player }, place) => {
      const from = lineFrom(tees[place] ?? back);
      return fansOf(from, player, landingsOf(from, player, parFor(player)));
    }),
  };
}

function fansOf(
  line: readonly SitePoint[],
  player: TeeSet['player'],
  landings: readonly SitePoint[],
): readonly BruteFan[] {
  const [tee, next, beyond] = line;
  const green = line.at(-1);
  if (!tee || !next || !green) return [];
  const isOneShot = landings.length === 0;
  const drive = isOneShot ? lengthOf(line) : SHOTS[player][0] * YARD;
  const reach = drive + (isOneShot ? PAST_GREEN : ROLL);
  const fans: BruteFan[] = [{ from: tee, aim: next, reach }];
  const over = beyond && straightTo(tee, next, beyond, drive);
  if (over && drive > apart(tee, next) && apart(next, over) >= CUT_GAIN) {
    const toGreen = over === green ? { reach: apart(tee, green) + PAST_GREEN } : { reach };
    fans.push({ from: tee, aim: over, ...toGreen });
  }
  const later = isOneShot ? line.slice(1, -1).slice(-1) : landings;
  later.forEach((from, place) => {
    const to = later[place + 1];
    fans.push(
      to
        ? { from, aim: to, reach: apart(from, to) + ROLL }
        : { from, aim: green, reach: apart(from, green) + PAST_GREEN },
    );
  });
  return fans;
}

/** The furthest place of a leg that lies no further from the tee than the drive; its end where all of it does. */
function straightTo(tee: SitePoint, turn: SitePoint, end: SitePoint, drive: number): SitePoint {
  if (apart(tee, end) <= drive) return end;
  const within = sampled([turn, end]).filter(({ at }) => apart(tee, at) <= drive);
  return within.at(-1)?.at ?? turn;
}

/** For tests: angle off the line of a shot (degrees), distance off it, and how far ahead. */
export function seenFrom(fan: BruteFan, point: SitePoint): { angle: number; off: number; far: number } {
  const far = apart(fan.from, point);
  const heading = Math.atan2(fan.aim.y - fan.from.y, fan.aim.x - fan.from.x);
  let by = Math.atan2(point.y - fan.from.y, point.x - fan.from.x) - heading;
  by = Math.abs(Math.atan2(Math.sin(by), Math.cos(by)));
  return { angle: (by * 180) / Math.PI, off: far * Math.sin(by), far };
}
