import { isHoleEdit, isRoutingEdit, isSiteEdit, type NamedEdit } from '@loopwright/document';
import { SETTINGS, type TeeSet } from '@loopwright/model';
import { shortName } from './short-name.ts';
import { holeStepWords } from './step-words/hole.ts';
import { routingStepWords } from './step-words/routing.ts';
import { siteStepWords } from './step-words/site.ts';
import type { StepNames } from './step-words/step-names.ts';

/** A step as undo and redo name it: 'move of green 6', so that a button reads 'Undo move of green 6'. */
export function stepWords(edit: NamedEdit, names: StepNames, teeSets: readonly TeeSet[]): string {
  if (isHoleEdit(edit)) return holeStepWords(edit, names, teeSets);
  if (isRoutingEdit(edit)) return routingStepWords(edit, names);
  if (isSiteEdit(edit)) return siteStepWords(edit, teeSets);
  switch (edit.edit) {
    case 'change setting':
      return `change of ‘${SETTINGS[edit.setting].label}’`;
    case 'decide':
      return 'decision about a finding';
    case 'reopen':
      return 'reopening of a finding';
    case 'lay out plan':
      return 'import of a course';
    case 'several':
      return shortName(edit.does);
    case 'put back what was tried':
      return `putting back of ${edit.steps} ${edit.steps === 1 ? 'step' : 'steps'}`;
  }
}
