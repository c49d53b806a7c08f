import { distanceBetween, polylineLength, unitVector } from '@loopwright/geometry';
import type { Settings, SitePoint } from '@loopwright/model';
import { reachOf } from '../card/model-player.ts';
import { playLine } from '../card/play-line.ts';
import type { HoleBeforeFans, ShotFan, TeeFigures } from '../figures.ts';

/** One shot of a model player: where from, which way, and how far a ball may go. */
export interface Shot {
  readonly from: SitePoint;
  /** Unit vector. */
  readonly towards: SitePoint;
  /** As far as a ball may get. */
  readonly reach: number;
  /** As far as it is meant to get: `reach` less roll, or less what is past the green. */
  readonly meant: number;
  readonly kind: ShotFan['shot'];
}

/**
 * The shots that a tee set's player hits on a hole, for the fans laid about them.
 *
 * The tee shot goes straight on past the turn for the whole drive and its roll; where the player can reach over the
 * corner there is a second line across it; each later shot goes from a landing area towards the next, the last one
 * past the green.
 *
 * Source: straight on past the turn, and the cut corner: common practice, no source. Distances are settings.
 */
export function shotsOf(hole: HoleBeforeFans, tee: TeeFigures, settings: Settings): readonly Shot[] {
  const line = playLine(tee.at, hole.centreline);
  const green = line[line.length - 1];
  if (!green || line.length < 2) return [];
  const drive = reachOf(tee.player, settings).drive;
  const roll = settings['fan-roll'];
  const past = settings['fan-past-green'];
  return [
    ...teeShots(line, tee, drive, { roll, past, gain: settings['fan-cut-gain'] }),
    ...laterShots(line, tee.landingAreas, green, roll, past),
  ];
}

interface Allowances {
  readonly roll: number;
  readonly past: number;
  readonly gain: number;
}

function teeShots(line: readonly SitePoint[], tee: TeeFigures, drive: number, allow: Allowances): readonly Shot[] {
  const [from, next, beyond] = line;
  if (!from || !next) return [];
  // A one-shot hole is played with the club for its length, bent or not; everything else with the driver.
  const isOneShot = tee.landingAreas.length === 0;
  const full = isOneShot ? polylineLength(line) : drive;
  const roll = isOneShot ? allow.past : allow.roll;
  const straight = shot(from, next, full, roll, 'tee shot');
  const over = beyond && distanceBetween(from, next) < full ? overTheCorner(from, next, beyond, full) : undefined;
  if (!over || distanceBetween(next, over) < allow.gain) return straight;
  // Over the corner at the green itself, nobody plays further than the green.
  const green = line[line.length - 1];
  const toGreen = green && over.x === green.x && over.y === green.y ? distanceBetween(from, green) : undefined;
  return [
    ...straight,
    ...(toGreen === undefined
      ? shot(from, over, full, roll, 'cut corner')
      : shot(from, over, toGreen, allow.past, 'cut corner')),
  ];
}

/** Where a drive straight over the corner meets the leg beyond it: as far on as it reaches, at most its end. */
function overTheCorner(from: SitePoint, turn: SitePoint, beyond: SitePoint, drive: number): SitePoint {
  const onward = unitVector(turn, beyond);
  if (!onward) return turn;
  const x = turn.x - from.x;
  const y = turn.y - from.y;
  const along = x * onward.x + y * onward.y;
  const on = Math.sqrt(along * along - (x * x + y * y) + drive * drive) - along;
  const share = Math.min(on, distanceBetween(turn, beyond));
  if (share < on) return beyond;
  return { x: turn.x + onward.x * share, y: turn.y + onward.y * share };
}

function laterShots(
  line: readonly SitePoint[],
  landings: readonly SitePoint[],
  green: SitePoint,
  roll: number,
  past: number,
): readonly Shot[] {
  // A short hole that bends is driven at its turn, and played on from there.
  const from = landings.length === 0 ? line.slice(1, -1).slice(-1) : landings;
  return from.flatMap((at, i) => {
    const next = from[i + 1];
    return next
      ? shot(at, next, distanceBetween(at, next), roll, 'second shot')
      : shot(at, green, distanceBetween(at, green), past, 'approach');
  });
}

function shot(from: SitePoint, to: SitePoint, meant: number, beyond: number, kind: Shot['kind']): readonly Shot[] {
  const towards = unitVector(from, to);
  return towards ? [{ from, towards, reach: meant + beyond, meant, kind }] : [];
}

/**
 * The fans drawn for a hole: the ground a ball may reach from its longest tee, at the inner and the outer angle.
 *
 * The checks look at every tee set's shots; the drawing would be hidden under them.
 */
export function shotFans(hole: HoleBeforeFans, settings: Settings): readonly ShotFan[] {
  const longest = longestTee(hole);
  if (hole.missing || !longest) return [];
  return shotsOf(hole, longest, settings).flatMap(({ from, towards, reach, kind }) => {
    const fan = { from, towards, reach, shot: kind };
    return [
      { ...fan, halfAngleDegrees: settings['fan-outer-angle'], severity: 'look' },
      { ...fan, halfAngleDegrees: settings['fan-inner-angle'], severity: 'stop' },
    ] as const;
  });
}

/** The tee that the centreline starts from. */
export function longestTee(hole: HoleBeforeFans): TeeFigures | undefined {
  const start = hole.centreline[0];
  return hole.tees.find(({ at }) => start && at.x === start.x && at.y === start.y) ?? hole.tees[0];
}
