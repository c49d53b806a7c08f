import type { NamedEdit, PutBackResult } from '@loopwright/document';
import type { Notice } from '../live/notice.ts';

/** What came of the last step, when that is not plain to see. @param step  the edit in words: 'move of green 6' */
export function noticeWords(notice: Notice, step: (edit: NamedEdit) => string): string | undefined {
  if (notice.kind === 'locked') return 'This routing is locked: look at it, but nothing on it moves.';
  if (notice.kind === 'gone') return `Somebody ${goneOf(notice.edit)} meanwhile. Nothing was changed.`;
  if (notice.kind === 'said') return notice.words;
  if (notice.kind === 'put back') return putBackWords(notice.result);
  const { result } = notice;
  if (result.kind === 'nothing') return 'There is no step of yours left to take back or do again.';
  const done = `${result.kind === 'undone' ? 'Undid' : 'Did again'}: ${step(result.step)}.`;
  return done + overtakenWords(result.overtaken) + goneWords(result.gone ?? []);
}

/** What happened to what a step speaks of, so that the step was not done. */
function goneOf({ edit }: NamedEdit): string {
  if (/vertex|outline/.test(edit)) return 'changed or removed that outline';
  if (/feature/.test(edit)) return 'took that feature away';
  if (/ base$/.test(edit)) return 'took that base away';
  if (/ mark$/.test(edit)) return 'took that site mark away';
  if (/ image$/.test(edit)) return 'took that picture away';
  if (/sketch/.test(edit)) return 'wiped that sketch';
  if (/tee set$/.test(edit)) return 'took that tee set away';
  return /routing|loop|round$/.test(edit) ? 'changed that part of the routing' : 'took that hole away';
}

function putBackWords(result: PutBackResult): string {
  if (result.kind === 'nothing') return 'None of those steps is left to put back.';
  const steps = result.steps === 1 ? 'One step' : `${result.steps} steps`;
  return `Put back what was tried: ${steps}.${overtakenWords(result.overtaken)} Undo brings it all again.`;
}

/** Undone or not, nobody sees it on a hole that is away. */
function goneWords(gone: readonly string[]): string {
  if (gone.length === 0) return '';
  const holes = gone.length === 1 ? 'That hole is' : `${gone.length} holes of it are`;
  return ` ${holes} not on the plan any more: somebody took ${gone.length === 1 ? 'it' : 'them'} away meanwhile.`;
}

function overtakenWords(overtaken: number): string {
  if (overtaken === 0) return '';
  const others = overtaken === 1 ? 'One part' : `${overtaken} parts`;
  return ` ${others} stayed as somebody else has put it meanwhile.`;
}
