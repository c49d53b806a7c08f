import type { SitePoint } from '@loopwright/model';
import type { Severity } from '../figures.ts';
import type { Shot } from './shots.ts';

/** A place seen from a shot. */
export interface FromShot {
  /** Metres along the line of the shot. */
  readonly ahead: number;
  /** Metres off the line of the shot, to either side. */
  readonly aside: number;
}

/** Where a place lies from a shot; `undefined` when it lies outside the fan. `tangent` is that of the half angle. */
export function inFan(shot: Shot, place: SitePoint, tangent: number): FromShot | undefined {
  const dx = place.x - shot.from.x;
  const dy = place.y - shot.from.y;
  const ahead = dx * shot.towards.x + dy * shot.towards.y;
  if (ahead <= 0 || ahead > shot.reach) return undefined;
  const aside = Math.abs(dx * shot.towards.y - dy * shot.towards.x);
  if (aside > ahead * tangent || ahead * ahead + aside * aside > shot.reach * shot.reach) return undefined;
  return { ahead, aside };
}

/** The place of the shot's line that is level with a place so far ahead. */
export function onShotLine({ from, towards }: Shot, ahead: number): SitePoint {
  return { x: from.x + towards.x * ahead, y: from.y + towards.y * ahead };
}

const RANK: Readonly<Record<Severity, number>> = { stop: 0, look: 1, mention: 2 };

export function isWorse(a: Severity, b: Severity): boolean {
  return RANK[a] < RANK[b];
}
