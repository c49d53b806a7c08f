import type { Held, InstrumentHand } from '../instruments/instrument-hand.ts';
import { useWatched } from '../live/use-watched.ts';
import { BadgeLines } from './BadgeLines.tsx';
import type { BadgeLine } from './badge-view.ts';
import { besidePointer } from './beside-pointer.ts';
import type { CanvasSize } from './site-transform.ts';

interface InstrumentBadgeProps {
  readonly hand: InstrumentHand;
  /** Worst gain and worst loss of what is being drawn. */
  readonly lines: readonly BadgeLine[];
  readonly size: CanvasSize;
}

/** What the instrument reads off, at its point: length and par so far, what it snapped to, and the worst that follows. */
export function InstrumentBadge({ hand, lines, size }: InstrumentBadgeProps) {
  const held = useWatched(hand.held);
  return held ? <Beside hand={hand} held={held} lines={lines} size={size} /> : null;
}

function Beside({ hand, held, lines, size }: InstrumentBadgeProps & { readonly held: Held }) {
  const at = useWatched(hand.point);
  const { atPointer = [] } = useWatched(held.running.picture);
  if (!at || atPointer.length + lines.length === 0) return null;
  return (
    <ul className="badge" data-testid="badge" style={{ transform: besidePointer(at, size) }}>
      {atPointer.map((words) => (
        <li key={words} className="badge__reading">
          {words}
        </li>
      ))}
      <BadgeLines lines={lines} />
    </ul>
  );
}
