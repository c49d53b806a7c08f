import type { HoleEdit } from '@loopwright/document';
import type { HoleId, TeeSet } from '@loopwright/model';
import { holeCalled, partWords } from '../names.ts';
import { shortName } from '../short-name.ts';
import type { StepNames } from './step-names.ts';

/** What was done to a hole, as undo names it. */
export function holeStepWords(edit: HoleEdit, names: StepNames, teeSets: readonly TeeSet[]): string {
  if (edit.edit === 'move holes')
    return edit.holes.length === 1 ? 'move of a hole' : `move of ${edit.holes.length} holes`;
  const hole = holeCalled(names.number(edit.hole));
  const part = (id: Parameters<typeof partWords>[2]) => partWords(teeSets, names.number(edit.hole), id);
  switch (edit.edit) {
    case 'move part':
      return `move of ${part(edit.part)}`;
    case 'pin':
    case 'unpin':
      return `${edit.edit}ning of ${part(edit.part)}`;
    case 'add turn point':
      return `turn added to ${hole}`;
    case 'remove turn point':
      return `turn taken out of ${hole}`;
    case 'lengthen':
      return `${edit.by < 0 ? 'shortening' : 'lengthening'} of ${hole}`;
    case 'shape green':
      return `shape of ${part('green')}`;
    case 'propose tee':
      return `proposal of ${part(`tee:${edit.teeSet}`)}`;
    case 'set waypoints':
      return `walk after ${hole}`;
    case 'set corridor':
      return `corridor of ${hole}`;
    default:
      return wholeStepWords(edit, hole, names);
  }
}

/** What is done to one part of a hole, or to what hangs on it. */
export type PartEdit = Extract<
  HoleEdit,
  {
    readonly edit:
      | 'move part'
      | 'pin'
      | 'unpin'
      | 'add turn point'
      | 'remove turn point'
      | 'lengthen'
      | 'shape green'
      | 'propose tee'
      | 'set waypoints'
      | 'set corridor';
  }
>;

function wholeStepWords(
  edit: Exclude<HoleEdit, PartEdit | { readonly edit: 'move holes' }>,
  hole: string,
  names: StepNames,
): string {
  const other = (id: HoleId) => shortName(names.number(id));
  switch (edit.edit) {
    case 'draw hole':
      return `drawing of ${hole}`;
    case 'copy hole':
      return `copy of ${hole}`;
    case 'remove hole':
      return `removal of ${hole}`;
    case 'move hole':
      return `move of ${hole}`;
    case 'reverse hole':
      return `reversal of ${hole}`;
    case 'exchange corridors':
      return `exchange of corridors ${other(edit.hole)} and ${other(edit.with)}`;
    case 'move in the round':
      return `renumbering of ${hole}`;
    case 'take out':
      return `taking out of ${other(edit.hole)}`;
    case 'bring back':
      return `bringing back of ${hole}`;
    case 'swap places':
      return `swap of ${hole}`;
    case 'set par':
      return `par of ${hole}`;
    case 'judge':
      return `verdict on ${hole}`;
    case 'relate':
    case 'unrelate':
      return `relation of ${hole}`;
    case 'name hole':
      return `name of ${hole}`;
    case 'note hole':
      return `note on ${hole}`;
  }
}
