import { cross, minus, plus, pointAlong, polylineLength, scaled, turnedLeft, unitVector } from '@loopwright/geometry';
import { pointToMillimetre, type SitePoint } from '@loopwright/model';

/** Two tee sets for the same player stand at least this far apart, metres: common practice, no source. */
const LEAST_STEP = 20;

/** A proposed tee leaves at least this share of the hole: common practice, no source. */
const LEAST_SHARE = 0.4;

export interface TeeToPropose {
  /** The hole's main line, from the placed tee. */
  readonly main: readonly SitePoint[];
  /** Tee shots of the placed tee's player and of the proposed tee's, metres. */
  readonly mainDrive: number;
  readonly drive: number;
  /** Places forward of the placed tee in the order of tee sets; negative when behind it. */
  readonly setsForward: number;
  /** Metres from the main line. */
  readonly aside: number;
}

/**
 * Where a tee that nobody has placed would stand: its player's drive reaches the same landing ground, from outside
 * the dogleg and clear of the line from the placed tee. On a one-shot hole, the same share of the player's drive.
 */
export function proposedTee(ask: TeeToPropose): SitePoint {
  const length = polylineLength(ask.main);
  const forward = Math.min(forwardBy(ask, length), length * (1 - LEAST_SHARE));
  const start = ask.main[0];
  const next = ask.main[1];
  if (!start || !next) throw new RangeError('proposedTee: a hole needs a tee and a green');
  const onLine = forward >= 0 ? pointAlong(ask.main, forward) : behind(start, next, -forward);
  const ahead = unitVector(onLine, pointAlong(ask.main, Math.max(forward, 0) + 1)) ?? { x: 0, y: 1 };
  const outside = scaled(turnedLeft(ahead), firstTurn(ask.main) === 'right' ? 1 : -1);
  return pointToMillimetre(plus(onLine, scaled(outside, ask.aside)));
}

function forwardBy({ mainDrive, drive, setsForward, aside }: TeeToPropose, length: number): number {
  if (length <= mainDrive) return stepped(length * (1 - drive / mainDrive), setsForward);
  // The drive from aside is the long side of a right-angled triangle whose short side is `aside`.
  const alongLine = Math.sqrt(Math.max(0, drive * drive - aside * aside));
  return stepped(mainDrive - alongLine, setsForward);
}

function stepped(forward: number, setsForward: number): number {
  const least = LEAST_STEP * Math.abs(setsForward);
  return setsForward < 0 ? Math.min(forward, -least) : Math.max(forward, least);
}

function behind(start: SitePoint, next: SitePoint, distance: number): SitePoint {
  return plus(start, scaled(unitVector(next, start) ?? { x: 0, y: 0 }, distance));
}

function firstTurn(line: readonly SitePoint[]): 'left' | 'right' | 'none' {
  const [a, b, c] = line;
  if (!a || !b || !c) return 'none';
  const turn = cross(minus(b, a), minus(c, b));
  return turn === 0 ? 'none' : turn > 0 ? 'left' : 'right';
}
