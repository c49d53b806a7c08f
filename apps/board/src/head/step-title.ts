import type { NamedEdit } from '@loopwright/document';
import { type LoopId, numberHoles, type Routing, type TeeSet } from '@loopwright/model';
import { LOOP_GONE, spareName } from '../reading/names.ts';
import { stepWords } from '../reading/step-words.ts';

/** The name of an undoable step; empty when there is none. */
export function stepTitle(step: NamedEdit | undefined, routing: Routing, teeSets: readonly TeeSet[]): string {
  if (!step) return '';
  const numbers = numberHoles(routing);
  const number = (hole: string) => String(numbers.get(hole) ?? spareName(routing, hole));
  const loop = (id: LoopId) => routing.loops.find((one) => one.id === id)?.name ?? LOOP_GONE;
  return stepWords(step, { number, loop }, teeSets);
}
