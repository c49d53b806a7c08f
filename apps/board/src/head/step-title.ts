import type { NamedEdit } from '@loopwright/document';
import { numberHoles, type Routing, type TeeSet } from '@loopwright/model';
import { spareName } from '../reading/names.ts';
import { stepWords } from '../reading/step-words.ts';

/** The name of an undoable step; empty when there is none. */
export function stepTitle(step: NamedEdit | undefined, routing: Routing, teeSets: readonly TeeSet[]): string {
  if (!step) return '';
  const numbers = numberHoles(routing);
  const number = (hole: string) => String(numbers.get(hole) ?? spareName(routing, hole));
  return stepWords(step, { number }, teeSets);
}
