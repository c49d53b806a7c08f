import { distanceBetween } from '@loopwright/geometry';
import { type Feature, type SitePoint, toMillimetre } from '@loopwright/model';
import type { Finding } from '../figures.ts';
import type { Tier } from '../findings/tier.ts';
import { clearanceFinding } from './clearance-finding.ts';
import { eachPiece } from './feature-distance.ts';
import type { HoleReach } from './hole-reach.ts';
import { onShotLine } from './in-fan.ts';
import { type ClearanceLimits, tangent } from './limits.ts';
import type { Shot } from './shots.ts';

/** The part of a piece of ground that lies in a fan, seen from the shot. */
interface Seen {
  /** Metres off the line of the shot. */
  readonly aside: number;
  readonly ahead: number;
  readonly at: SitePoint;
}

/** Public ground inside a hole's shot fans at the wider angle, straight on past the turn. */
export function publicInFan(hole: HoleReach, feature: Feature, limits: ClearanceLimits): Finding | undefined {
  const angle = tangent(limits.settings['public-angle']);
  let worst: { readonly shot: Shot; readonly seen: Seen } | undefined;
  for (const shot of hole.shots) {
    eachPiece(feature, (a, b) => {
      const seen = pieceInFan(shot, a, b, angle);
      if (seen && (!worst || seen.aside < worst.seen.aside)) worst = { shot, seen };
    });
  }
  if (!worst) return undefined;
  const { shot, seen } = worst;
  const measured = toMillimetre(Math.max(0, seen.aside - feature.buffer));
  return clearanceFinding({
    code: 'public-in-fan',
    holes: [hole.id],
    features: [feature.id],
    measured,
    tier: tierFor(measured, isForGreen(shot, hole), seen.ahead * angle, limits),
    place: { type: 'line', points: [onShotLine(shot, seen.ahead), seen.at] },
    detail: { kind: feature.kind, shot: shot.kind, ahead: toMillimetre(seen.ahead) },
  });
}

/** A shot meant for the green is held to the ordinance's distance at a green, every other to that at a landing area. */
function isForGreen(shot: Shot, { green }: HoleReach): boolean {
  return distanceBetween(onShotLine(shot, shot.meant), green.centre) < 1;
}

function tierFor(measured: number, forGreen: boolean, halfWidth: number, { settings }: ClearanceLimits): Tier {
  const setting = forGreen ? 'public-green-stop' : 'public-landing-stop';
  const look = settings['public-look'];
  if (measured < settings[setting]) return { severity: 'stop', limit: settings[setting], setting };
  if (measured < look) return { severity: 'look', limit: look, setting: 'public-look' };
  return { severity: 'mention', limit: toMillimetre(halfWidth), setting: 'public-angle' };
}

/**
 * The place of a straight piece inside a fan that is nearest to the line of the shot.
 *
 * The piece is cut by the fan's two sides and by the end of its reach; what is left is a shorter piece, whose nearest
 * place is where it crosses the line, or one of its ends.
 */
function pieceInFan({ from, towards, reach }: Shot, a: SitePoint, b: SitePoint, angle: number): Seen | undefined {
  const start = { x: a.x - from.x, y: a.y - from.y };
  const end = { x: b.x - from.x, y: b.y - from.y };
  const ahead0 = start.x * towards.x + start.y * towards.y;
  const aside0 = start.x * towards.y - start.y * towards.x;
  const ahead1 = end.x * towards.x + end.y * towards.y;
  const aside1 = end.x * towards.y - end.y * towards.x;
  let share: readonly [number, number] | undefined = [0, 1];
  share = kept(share, ahead0, ahead1);
  share = kept(share, reach - ahead0, reach - ahead1);
  share = kept(share, ahead0 * angle - aside0, ahead1 * angle - aside1);
  share = kept(share, ahead0 * angle + aside0, ahead1 * angle + aside1);
  if (!share) return undefined;
  const at = nearestShare(share, aside0, aside1);
  const aside = Math.abs(aside0 + (aside1 - aside0) * at);
  const ahead = ahead0 + (ahead1 - ahead0) * at;
  return { aside, ahead, at: { x: a.x + (b.x - a.x) * at, y: a.y + (b.y - a.y) * at } };
}

/** The share of a piece on which a value, even between its ends, is not below 0. */
function kept(
  share: readonly [number, number] | undefined,
  start: number,
  end: number,
): readonly [number, number] | undefined {
  if (!share || (start < 0 && end < 0)) return undefined;
  if (start >= 0 && end >= 0) return share;
  const zero = start / (start - end);
  const next: readonly [number, number] =
    start < 0 ? [Math.max(share[0], zero), share[1]] : [share[0], Math.min(share[1], zero)];
  return next[0] <= next[1] ? next : undefined;
}

function nearestShare([from, to]: readonly [number, number], aside0: number, aside1: number): number {
  const crossing = aside0 === aside1 ? from : aside0 / (aside0 - aside1);
  return Math.min(to, Math.max(from, crossing));
}
