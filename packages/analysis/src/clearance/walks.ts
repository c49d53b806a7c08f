import { boundsOf, boxesMeet, distanceBetween, grown, polylinesApart } from '@loopwright/geometry';
import { type HoleId, type SitePoint, toMillimetre } from '@loopwright/model';
import type { Finding, WalkFigures } from '../figures.ts';
import { tierUnder } from '../findings/tier.ts';
import { crossingSeverity } from '../walk/crossing-findings.ts';
import { betweenPlaces, clearanceFinding } from './clearance-finding.ts';
import type { HoleReach } from './hole-reach.ts';
import { isWorse } from './in-fan.ts';
import type { ClearanceLimits } from './limits.ts';

/** Metres between the places where a walk is tried against a fan. */
const STEP = 5;

const NONE: readonly Finding[] = [];

/**
 * A walk past a hole it does not belong to: how near it comes to the landing areas, and how long it stays inside the
 * shot fans. What crosses the line of play is told with the walk, and here again only where the landing area is the
 * graver of the two. Passing behind a tee or a green is no crossing.
 */
export function checkWalkPast(walk: WalkFigures, hole: HoleReach, limits: ClearanceLimits): readonly Finding[] {
  const ends = endsOf(walk);
  if (ends.includes(hole.id) || walk.distance <= 0) return NONE;
  const box = boundsOf(walk.path);
  const isNear = boxesMeet(grown(box, limits.farthest), hole.box);
  if (!isNear && !boxesMeet(box, hole.fanBox)) return NONE;
  const crossed = crossingSeverity(walk, hole.figures, limits.settings);
  const landing = isNear ? walkAndLanding(walk, ends, hole, limits) : undefined;
  if (landing && (!crossed || isWorse(landing.severity, crossed))) return [landing];
  if (landing || crossed) return NONE;
  return walkInFan(walk, ends, hole, limits);
}

function endsOf({ from, to }: WalkFigures): readonly HoleId[] {
  return [...('hole' in from ? [from.hole] : []), ...('hole' in to ? [to.hole] : [])];
}

function walkAndLanding(
  walk: WalkFigures,
  ends: readonly HoleId[],
  hole: HoleReach,
  limits: ClearanceLimits,
): Finding | undefined {
  let closest: ReturnType<typeof polylinesApart> | undefined;
  for (const landing of hole.landings) {
    const apart = polylinesApart([landing], walk.path);
    if (!closest || apart.distance < closest.distance) closest = apart;
  }
  const measured = closest && toMillimetre(closest.distance);
  const tier = measured === undefined ? undefined : tierUnder(limits.walkLanding, measured);
  if (!closest || measured === undefined || !tier) return undefined;
  const place = betweenPlaces(closest.first, closest.second);
  return clearanceFinding({ code: 'walk-landing', holes: [hole.id, ...ends], measured, tier, place, about: walk.key });
}

function walkInFan(
  walk: WalkFigures,
  ends: readonly HoleId[],
  hole: HoleReach,
  limits: ClearanceLimits,
): readonly Finding[] {
  const { path } = walk;
  let count = 0;
  let first: SitePoint | undefined;
  let last: SitePoint | undefined;
  for (let i = 1; i < path.length; i++) {
    const a = path[i - 1];
    const b = path[i];
    if (!a || !b) continue;
    const length = distanceBetween(a, b);
    for (let on = STEP / 2; on < length; on += STEP) {
      const share = on / length;
      const x = a.x + (b.x - a.x) * share;
      const y = a.y + (b.y - a.y) * share;
      if (!isInPlay(x, y, hole, limits)) continue;
      count += 1;
      last = { x, y };
      first ??= last;
    }
  }
  const measured = count * STEP;
  const limit = limits.settings['walk-in-fan-mention'];
  if (!first || !last || measured <= limit) return NONE;
  const tier = { severity: 'mention', limit, setting: 'walk-in-fan-mention' } as const;
  const finding = clearanceFinding({
    code: 'walk-in-fan',
    holes: [hole.id, ...ends],
    measured,
    tier,
    place: betweenPlaces(first, last),
    about: walk.key,
  });
  return [{ ...finding, worse: 'more' }];
}

/** Inside a shot's fan, but behind a green, and past where a shot is meant to finish, walks are usual. */
function isInPlay(x: number, y: number, { fanBox, shots }: HoleReach, { outer }: ClearanceLimits): boolean {
  if (x < fanBox.minX || x > fanBox.maxX || y < fanBox.minY || y > fanBox.maxY) return false;
  for (const { from, towards, meant } of shots) {
    const dx = x - from.x;
    const dy = y - from.y;
    const ahead = dx * towards.x + dy * towards.y;
    if (ahead <= 0 || ahead > meant) continue;
    if (Math.abs(dx * towards.y - dy * towards.x) <= ahead * outer) return true;
  }
  return false;
}
