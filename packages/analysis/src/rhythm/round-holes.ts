import { unitVector } from '@loopwright/geometry';
import type { HoleId, SitePoint } from '@loopwright/model';
import { sexOf } from '../card/model-player.ts';
import { longestTee } from '../clearance/shots.ts';
import type { HoleFigures, RoundFigures, TeeFigures } from '../figures.ts';
import type { RoundContext } from '../round-context.ts';

/** A hole as it comes in a round. */
export interface RoundHole {
  readonly id: HoleId;
  /** Its place in this round, from 1. */
  readonly number: number;
  readonly figures: HoleFigures;
  /** The longest tee: rhythm is judged from it. */
  readonly tee: TeeFigures;
  readonly par: number;
  readonly greenCentre: SitePoint;
  /** Unit vector from tee to green. */
  readonly heading: SitePoint;
}

/** The complete holes of a round, in order, with the numbers they have in it. Incomplete holes keep their number. */
export function roundHoles(round: RoundFigures, { figures }: Pick<RoundContext, 'figures'>): readonly RoundHole[] {
  return round.holes.flatMap((id, place) => {
    const hole = figures.get(id);
    return hole ? roundHole(hole, place + 1) : [];
  });
}

function roundHole(figures: HoleFigures, number: number): readonly RoundHole[] {
  const tee = longestTee(figures);
  const start = figures.centreline[0];
  const greenCentre = figures.centreline[figures.centreline.length - 1];
  const heading = start && greenCentre && unitVector(start, greenCentre);
  if (figures.missing || !tee || !heading) return [];
  return [{ id: figures.id, number, figures, tee, par: figures.par[sexOf(tee.player)], greenCentre, heading }];
}

/** Neighbours in the round: pairs whose numbers follow each other. */
export function followingPairs(holes: readonly RoundHole[]): readonly (readonly [RoundHole, RoundHole])[] {
  return holes.flatMap((hole, i) => {
    const next = holes[i + 1];
    return next && next.number === hole.number + 1 ? [[hole, next] as const] : [];
  });
}

/** Runs of holes in a row that hold together; each hole is in one run, and runs are as long as they can be. */
export function runsOf(
  holes: readonly RoundHole[],
  holdTogether: (before: RoundHole, after: RoundHole) => boolean,
): readonly (readonly RoundHole[])[] {
  const runs: RoundHole[][] = [];
  for (const hole of holes) {
    const run = runs[runs.length - 1];
    const before = run?.[run.length - 1];
    if (run && before && holdTogether(before, hole)) run.push(hole);
    else runs.push([hole]);
  }
  return runs;
}

export const idsOf = (holes: readonly RoundHole[]): readonly HoleId[] => holes.map(({ id }) => id);
