import type { NamedEdit } from '@loopwright/document';
import { SETTINGS, type TeeSet } from '@loopwright/model';
import { type Names, partWords } from './names.ts';

/** A step as undo and redo name it: 'move of green 6', so that a button reads 'Undo move of green 6'. */
export function stepWords(edit: NamedEdit, names: Pick<Names, 'number'>, teeSets: readonly TeeSet[]): string {
  switch (edit.edit) {
    case 'move part':
      return `move of ${partWords(teeSets, names.number(edit.hole), edit.part)}`;
    case 'pin':
    case 'unpin':
      return `${edit.edit}ning of ${partWords(teeSets, names.number(edit.hole), edit.part)}`;
    case 'change setting':
      return `change of ‘${SETTINGS[edit.setting].label}’`;
    case 'decide':
      return 'decision about a finding';
    case 'reopen':
      return 'reopening of a finding';
    case 'lay out plan':
      return 'import of a course';
    default:
      return 'hole' in edit ? (HOLE_STEPS[edit.edit]?.(names.number(edit.hole)) ?? edit.edit) : edit.edit;
  }
}

/** Steps that need nothing but the hole's number. */
const HOLE_STEPS: Readonly<Record<string, (number: string) => string>> = {
  'move hole': (number) => `move of hole ${number}`,
  'reverse hole': (number) => `reversal of hole ${number}`,
  'move in the round': (number) => `renumbering of hole ${number}`,
  'take out': (number) => `taking out of ${number}`,
  'bring back': (number) => `bringing back of hole ${number}`,
  'swap places': (number) => `swap of hole ${number}`,
  'set par': (number) => `par of hole ${number}`,
  judge: (number) => `verdict on hole ${number}`,
  relate: (number) => `relation of hole ${number}`,
  unrelate: (number) => `relation of hole ${number}`,
  'name hole': (number) => `name of hole ${number}`,
};
