import { type KeyboardEvent, memo } from 'react';
import { saysTheSame } from '../reading/steady.ts';
import { SeverityMark } from '../style/SeverityMark.tsx';
import type { ThreadView } from './thread-view.ts';

interface ThreadProps {
  readonly thread: ThreadView | undefined;
  readonly selected: boolean;
  readonly onChoose: (walk: string) => void;
  readonly onKey: (event: KeyboardEvent) => void;
}

/** The walk from one bead to the next, written on the thread between them. Arrow right leads to it from the bead above. */
export const Thread = memo(function Thread({ thread, selected, onChoose, onKey }: ThreadProps) {
  if (!thread) return <li className="thread" aria-hidden="true" />;
  return (
    <li className={`thread${selected ? ' thread--selected' : ''}`}>
      <button
        type="button"
        className="thread__button"
        tabIndex={-1}
        aria-label={thread.said}
        aria-current={selected}
        aria-describedby="thread-keys"
        onKeyDown={onKey}
        onClick={() => onChoose(thread.key)}
      >
        <span className="thread__figure">{thread.figure}</span>
        <span className="thread__change">{thread.change}</span>
        {thread.worst && <SeverityMark severity={thread.worst} words={thread.worst} />}
      </button>
    </li>
  );
}, saysTheSame);
