import type { HoleId, SitePoint } from '@loopwright/model';
import type { HoleView } from '../drawing/hole-view.ts';

/**
 * The holes that lie in a frame: those with any tee, turn point, green or the middle of their line in it.
 * A corner of a long leg alone does not count, or a small frame would pick out half the course.
 */
export function holesInFrame(
  holes: readonly HoleView[],
  [one, other]: readonly [SitePoint, SitePoint],
): readonly HoleId[] {
  const box = {
    minX: Math.min(one.x, other.x),
    maxX: Math.max(one.x, other.x),
    minY: Math.min(one.y, other.y),
    maxY: Math.max(one.y, other.y),
  };
  const isIn = ({ x, y }: SitePoint) => x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY;
  const placesOf = ({ centreline, numberPlaces, green }: HoleView) => [
    ...centreline,
    ...numberPlaces.slice(0, 1),
    ...(green ? [green.at] : []),
  ];
  return holes.filter((hole) => placesOf(hole).some(isIn)).map(({ id }) => id);
}
