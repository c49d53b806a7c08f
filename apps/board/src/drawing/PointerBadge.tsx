import type { CanvasPoint } from '@loopwright/model';
import type { Watched } from '../live/slot.ts';
import { useWatched } from '../live/use-watched.ts';
import { BadgeLines } from './BadgeLines.tsx';
import type { BadgeLine } from './badge-view.ts';
import { besidePointer } from './beside-pointer.ts';
import type { CanvasSize } from './site-transform.ts';

interface PointerBadgeProps {
  /** What is being changed, as it runs with the pointer. */
  readonly figures: readonly string[];
  readonly lines: readonly BadgeLine[];
  readonly pointer: Watched<CanvasPoint>;
  readonly size: CanvasSize;
}

/** The figures of what is dragged, then worst gain and worst loss, beside the pointer and never under it; on the other side near the edge. */
export function PointerBadge(props: PointerBadgeProps) {
  return props.lines.length + props.figures.length > 0 ? <Beside {...props} /> : null;
}

function Beside({ figures, lines, pointer, size }: PointerBadgeProps) {
  const at = useWatched(pointer);
  return (
    <ul className="badge" data-testid="badge" style={{ transform: besidePointer(at, size) }}>
      {figures.map((words) => (
        <li key={words} className="badge__reading">
          {words}
        </li>
      ))}
      <BadgeLines lines={lines} />
    </ul>
  );
}
