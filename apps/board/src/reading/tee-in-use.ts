import type { HoleFigures } from '@loopwright/analysis';
import type { TeeSetId } from '@loopwright/model';

/** The tee of the chosen set, else the longest there is. */
export function teeOf(figures: HoleFigures | undefined, teeSet: TeeSetId) {
  return figures?.tees.find((tee) => tee.teeSet === teeSet) ?? figures?.tees[0];
}
