import type { SavedState } from '@loopwright/document';

/** What the head says about saving: never more than is known. */
export interface SavedWords {
  readonly mark: '✓' | '↻' | '!' | '…';
  readonly words: string;
  readonly tone: 'calm' | 'busy' | 'alarm';
}

/** The saved state in truthful words, short enough for the head; why a board was closed is told over it. */
export function savedWords(saved: SavedState): SavedWords {
  switch (saved.kind) {
    case 'joining':
      return { mark: '…', words: 'joining the board', tone: 'busy' };
    case 'saved':
      return { mark: '✓', words: 'saved on the server', tone: 'calm' };
    case 'saving':
      return { mark: '↻', words: saved.waiting > 0 ? `saving ${changes(saved.waiting)}` : 'saving', tone: 'busy' };
    case 'offline':
      return { mark: '!', words: offlineWords(saved), tone: 'alarm' };
    case 'closed':
      return { mark: '!', words: 'closed: nothing more is saved', tone: 'alarm' };
  }
}

const changes = (count: number) => `${count} ${count === 1 ? 'change' : 'changes'}`;

function offlineWords({ kept, waiting }: Extract<SavedState, { kind: 'offline' }>): string {
  if (waiting === 0) return kept ? 'offline: everything here is kept on this machine' : 'offline: nothing is waiting';
  return kept
    ? `offline: kept on this machine, ${changes(waiting)} waiting`
    : `offline: ${changes(waiting)} in this page only, keep it open`;
}
