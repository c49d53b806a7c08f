import type { Analysis } from '@loopwright/analysis';
import type { NamedEdit } from '@loopwright/document';
import type { Plan } from '@loopwright/model';
import type { Change } from '../board/parts.ts';
import type { Frame } from './frame.ts';

/** A change that has just been written, to be shown until the next one. */
export interface Landing {
  readonly edits: readonly NamedEdit[];
  readonly takenBack?: true;
  readonly by?: NonNullable<Change['by']>;
  readonly before: Analysis;
  readonly beforePlan: Plan;
}

/** What a change of mine will be compared with: what the page shows without my drag. */
export function landingFrom(shown: Frame | undefined): Omit<Landing, 'edits'> | undefined {
  if (!shown) return undefined;
  const { change } = shown;
  if (change?.state === 'in progress' && !change.by && shown.mineInHand) {
    return { before: change.before, beforePlan: change.beforePlan };
  }
  return { before: shown.analysis, beforePlan: shown.plan };
}
