import type { CanvasPoint } from '@loopwright/model';
import type { Watched } from '../live/slot.ts';
import { useWatched } from '../live/use-watched.ts';
import { BadgeLines } from './BadgeLines.tsx';
import type { BadgeLine } from './badge-view.ts';
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
  const { x, y } = useWatched(pointer);
  // A drag may lead over the edge; the badge stays on the drawing.
  const at = { x: Math.min(Math.max(x, 0), size.width), y: Math.min(Math.max(y, 0), size.height) };
  const across = at.x > size.width - 320 ? `calc(${at.x - 18}px - 100%)` : `${at.x + 20}px`;
  const down = at.y > size.height - 110 ? `calc(${at.y - 14}px - 100%)` : `${at.y + 18}px`;
  return (
    <ul className="badge" data-testid="badge" style={{ transform: `translate(${across}, ${down})` }}>
      <BadgeLines lines={lines} />
    </ul>
  );
}
