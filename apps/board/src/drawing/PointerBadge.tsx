import type { CanvasPoint } from '@loopwright/model';
import type { Watched } from '../live/slot.ts';
import { useWatched } from '../live/use-watched.ts';
import { BadgeLines } from './BadgeLines.tsx';
import type { BadgeLine } from './badge-view.ts';
import { besidePointer } from './beside-pointer.ts';
import type { CanvasSize } from './site-transform.ts';

interface PointerBadgeProps {
  readonly lines: readonly BadgeLine[];
  readonly pointer: Watched<CanvasPoint>;
  readonly size: CanvasSize;
}

/** Worst gain and worst loss, beside the pointer and never under it; on the other side near the edge. */
export function PointerBadge({ lines, pointer, size }: PointerBadgeProps) {
  return lines.length > 0 ? <Beside lines={lines} pointer={pointer} size={size} /> : null;
}

function Beside({ lines, pointer, size }: PointerBadgeProps) {
  const at = useWatched(pointer);
  return (
    <ul className="badge" data-testid="badge" style={{ transform: besidePointer(at, size) }}>
      <BadgeLines lines={lines} />
    </ul>
  );
}
