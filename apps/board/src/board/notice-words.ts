import type { NamedEdit } from '@loopwright/document';
import type { Notice } from '../live/board-session.ts';

/** What came of the last step, when that is not plain to see. @param step  the edit in words: 'move of green 6' */
export function noticeWords(notice: Notice, step: (edit: NamedEdit) => string): string | undefined {
  if (notice.kind === 'locked') return 'This routing is locked: look at it, but nothing on it moves.';
  if (notice.kind === 'gone') return 'Somebody took that hole away meanwhile. Nothing was changed.';
  if (notice.kind === 'said') return notice.words;
  const { result } = notice;
  if (result.kind === 'nothing') return 'There is no step of yours left to take back or do again.';
  const done = `${result.kind === 'undone' ? 'Undid' : 'Did again'}: ${step(result.step)}.`;
  if (result.overtaken === 0) return done;
  const others = result.overtaken === 1 ? 'One part' : `${result.overtaken} parts`;
  return `${done} ${others} stayed as somebody else has put it meanwhile.`;
}
