import type { HoleId, LoopId } from '@loopwright/model';

/** What a step may speak of. A loop goes without its name where nobody knows it. */
export interface StepNames {
  number(hole: HoleId): string;
  loop?(id: LoopId): string;
}
