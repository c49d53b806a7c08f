import { distanceBetween, pointAlong } from '@loopwright/geometry';
import { pointToMillimetre, type SitePoint } from '@loopwright/model';

/**
 * Where a player's full shots finish on the line of play.
 *
 * A shot that would finish close to the green is left to the green: the tee shot then counts as played to the
 * nearest turn point, where there is one; a later one is dropped.
 *
 * @param line  tee, turn points, green centre
 * @param finishes  metres from the tee, from `fullShots`
 * @param shortOfGreen  how close is close, metres along the line
 */
export function landingAreas(
  line: readonly SitePoint[],
  length: number,
  finishes: readonly number[],
  shortOfGreen: number,
): readonly SitePoint[] {
  const areas: SitePoint[] = [];
  finishes.forEach((finish, shot) => {
    const at = pointAlong(line, finish);
    if (length - finish >= shortOfGreen) areas.push(pointToMillimetre(at));
    else if (shot === 0) areas.push(...nearestTurn(line, at));
  });
  return areas;
}

function nearestTurn(line: readonly SitePoint[], at: SitePoint): readonly SitePoint[] {
  const turns = line.slice(1, -1);
  const nearest = turns.reduce<SitePoint | undefined>(
    (best, turn) => (!best || distanceBetween(turn, at) < distanceBetween(best, at) ? turn : best),
    undefined,
  );
  return nearest ? [nearest] : [];
}
