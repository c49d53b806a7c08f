import { roundedCosine } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';
import { toMillimetre } from '@loopwright/model';
import type { HoleFigures, RoundFigures } from '../figures.ts';

const SECTORS = 8;
const DIAGONAL = roundedCosine(45);

/** Middles of the eight sectors, clockwise from north. */
const MIDDLES: readonly SitePoint[] = [
  { x: 0, y: 1 },
  { x: DIAGONAL, y: DIAGONAL },
  { x: 1, y: 0 },
  { x: DIAGONAL, y: -DIAGONAL },
  { x: 0, y: -1 },
  { x: -DIAGONAL, y: -DIAGONAL },
  { x: -1, y: 0 },
  { x: -DIAGONAL, y: DIAGONAL },
];

/**
 * The sector of the compass that a direction falls in, 0 to 7 clockwise from the plane's +y: the one whose middle is
 * nearest by dot product, the earlier of two equally near. A vector of no length has none.
 */
export function sectorOf(direction: SitePoint): number | undefined {
  if (direction.x === 0 && direction.y === 0) return undefined;
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  MIDDLES.forEach((middle, sector) => {
    const agreement = middle.x * direction.x + middle.y * direction.y;
    if (agreement > most) {
      most = agreement;
      best = sector;
    }
  });
  return best;
}

/** Playing directions of a round: holes and metres by sector of 45°, each hole by its straight line from tee to green. */
export function roseOf(holes: readonly HoleFigures[]): RoundFigures['rose'] {
  const rose = Array.from({ length: SECTORS }, () => ({ holes: 0, length: 0 }));
  for (const hole of holes) {
    const tee = hole.centreline[0];
    const green = hole.centreline[hole.centreline.length - 1];
    const sector = tee && green && sectorOf({ x: green.x - tee.x, y: green.y - tee.y });
    const place = sector === undefined ? undefined : rose[sector];
    if (!place) continue;
    place.holes += 1;
    place.length = toMillimetre(place.length + playedLength(hole));
  }
  return rose;
}

/** The length a hole is played at: from its longest tee. */
export function playedLength(hole: HoleFigures): number {
  const start = hole.centreline[0];
  const tee = hole.tees.find(({ at }) => at.x === start?.x && at.y === start?.y) ?? hole.tees[0];
  return tee?.measuredLength ?? 0;
}
