import { reachOf } from '@loopwright/analysis';
import { distanceBetween, plus, scaled, unitVector } from '@loopwright/geometry';
import type { ModelPlayer, Settings, SitePoint } from '@loopwright/model';

/**
 * The line of the hole that a reach leaves: from the first point by the turns that were set, to the aim.
 *
 * Straight from a tee to a green beyond the drive it turns where the drive lands, so that the turn can be moved.
 */
export function reachLine(
  path: readonly SitePoint[],
  aim: SitePoint,
  player: ModelPlayer,
  settings: Settings,
): readonly SitePoint[] {
  const tee = path[0];
  const towards = tee && unitVector(tee, aim);
  if (!tee || !towards || path.length > 1) return [...path, aim];
  const { drive } = reachOf(player, settings);
  const isShort = distanceBetween(tee, aim) < drive + settings['landing-short-of-green'];
  return isShort ? [tee, aim] : [tee, plus(tee, scaled(towards, drive)), aim];
}
