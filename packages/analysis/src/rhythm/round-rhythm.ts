import type { Settings } from '@loopwright/model';
import type { RoundFigures } from '../figures.ts';
import type { RoundContext } from '../round-context.ts';
import { type RoundHole, roundHoles } from './round-holes.ts';

/** A round, made ready for the checks of its rhythm. */
export interface RoundRhythm {
  readonly round: RoundFigures;
  readonly name: string;
  /** Complete holes, in order. */
  readonly holes: readonly RoundHole[];
  readonly settings: Settings;
}

export function roundRhythm(round: RoundFigures, context: RoundContext): RoundRhythm {
  return {
    round,
    name: context.routing.rounds.find(({ id }) => id === round.round)?.name ?? '',
    holes: roundHoles(round, context),
    settings: context.settings,
  };
}
