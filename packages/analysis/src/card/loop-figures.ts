import type { Loop, Settings, TeeSet } from '@loopwright/model';
import type { HoleFigures, LoopFigures, WalkFigures } from '../figures.ts';
import { sumOf, totalLengths, totalPar } from './totals.ts';

/** Totals of a loop, with its walks and what it is made of. */
export function loopFigures(
  loop: Loop,
  holes: readonly HoleFigures[],
  walks: readonly WalkFigures[],
  teeSets: readonly TeeSet[],
  settings: Settings,
): LoopFigures {
  return {
    loop: loop.id,
    holes: holes.map(({ id }) => id),
    par: totalPar(holes),
    lengths: totalLengths(holes, teeSets),
    walk: sumOf(walks.map(({ distance }) => distance)),
    walkTime: sumOf(walks.map(({ time }) => time)),
    walkLengths: walks.map(({ distance }) => distance),
    bends: bendsBySide(holes, settings['bend-angle']),
    pars: parsOf(holes),
  };
}

/** Holes that bend by at least so much, by the side of their sharpest bend. */
function bendsBySide(holes: readonly HoleFigures[], leastDegrees: number): LoopFigures['bends'] {
  const least = (leastDegrees * Math.PI) / 180;
  let left = 0;
  let right = 0;
  for (const { bends } of holes) {
    const sharpest = bends.reduce((most, bend) => (most && most.angle >= bend.angle ? most : bend), bends[0]);
    if (!sharpest || sharpest.angle <= least) continue;
    if (sharpest.side === 'left') left += 1;
    else right += 1;
  }
  return { left, right };
}

function parsOf(holes: readonly HoleFigures[]): LoopFigures['pars'] {
  const counts = new Map<number, number>();
  for (const { par } of holes) if (par.men > 0) counts.set(par.men, (counts.get(par.men) ?? 0) + 1);
  return [...counts].map(([par, count]) => ({ par, holes: count })).sort((a, b) => a.par - b.par);
}
