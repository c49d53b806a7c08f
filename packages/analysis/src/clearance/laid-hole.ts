import { type Hole, type Relation, type SitePoint, settingsOf, type TeeSet } from '@loopwright/model';
import { holeFigures } from '../card/hole-figures.ts';
import { type HoleReach, holeReach } from './hole-reach.ts';
import { type ClearanceLimits, clearanceLimits } from './limits.ts';

/** For tests: the limits as they come, and one tee set whose player drives 250 yd (228.6 m). */
export const LIMITS: ClearanceLimits = clearanceLimits(settingsOf({}));
const BACK: TeeSet = { id: 'back', name: 'Back', player: 'scratch man' };

interface Laid {
  readonly relations?: readonly Relation[];
  readonly greenSize?: number;
}

/** For tests: a hole through these places, tee first, green centre last. */
export function laidHole(id: string, places: readonly (readonly [x: number, y: number])[], laid: Laid = {}): HoleReach {
  const points: readonly SitePoint[] = places.map(([x, y]) => ({ x, y }));
  const tee = points[0];
  const centre = points[points.length - 1];
  if (!tee || !centre) throw new RangeError('laidHole: needs a tee and a green');
  const size = laid.greenSize ?? 24;
  const hole: Hole = {
    id,
    seat: { in: 'loop', loop: 'l', key: id },
    tees: { back: tee },
    turnPoints: points.slice(1, -1).map((at, i) => ({ id: `${id}-${i}`, at })),
    green: { centre, length: size, width: size, bearing: 0 },
    par: { men: 'by length', women: 'by length' },
    verdict: 'undecided',
    pinned: [],
    waypoints: [],
    relations: laid.relations ?? [],
  };
  const reach = holeReach(holeFigures(hole, [BACK], LIMITS.settings), LIMITS);
  if (!reach) throw new RangeError('laidHole: the hole is incomplete');
  return reach;
}
