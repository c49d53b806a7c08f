import { type Box, boundsOf, roundedSine } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';
import type { HoleBeforeFans, ShotFan } from '../figures.ts';

/** The box around everything a hole takes up or its balls may reach. */
export function holeBounds(hole: HoleBeforeFans, fans: readonly ShotFan[]): Box {
  return boundsOf([...hole.centreline, ...hole.tees.map(({ at }) => at), ...hole.corridor, ...fans.flatMap(corners)]);
}

/** A triangle around a fan's sector. */
function corners({ from, towards, reach, halfAngleDegrees }: ShotFan): readonly SitePoint[] {
  // Twice the sine is more than the tangent up to 60°; no fan is wider.
  const aside = 2 * reach * roundedSine(halfAngleDegrees);
  const x = from.x + towards.x * reach;
  const y = from.y + towards.y * reach;
  return [
    from,
    { x: x - towards.y * aside, y: y + towards.x * aside },
    { x: x + towards.y * aside, y: y - towards.x * aside },
  ];
}
