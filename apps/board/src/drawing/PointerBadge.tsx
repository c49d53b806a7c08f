import type { CanvasPoint } from '@loopwright/model';
import type { BadgeLine } from './badge-view.ts';
import type { CanvasSize } from './site-transform.ts';

interface PointerBadgeProps {
  readonly lines: readonly BadgeLine[];
  readonly at: CanvasPoint;
  readonly size: CanvasSize;
}

/** Worst gain and worst loss, beside the pointer and never under it; on the other side near the edge. */
export function PointerBadge({ lines, at, size }: PointerBadgeProps) {
  if (lines.length === 0) return null;
  const across = at.x > size.width - 320 ? `calc(${at.x - 18}px - 100%)` : `${at.x + 20}px`;
  const down = at.y > size.height - 110 ? `calc(${at.y - 14}px - 100%)` : `${at.y + 18}px`;
  return (
    <ul className="badge" data-testid="badge" style={{ transform: `translate(${across}, ${down})` }}>
      {lines.map((line) => (
        <li key={line.tone + line.text} className={`badge__line badge__line--${line.tone}`}>
          <span aria-hidden="true">{line.sign}</span> {line.text}
        </li>
      ))}
    </ul>
  );
}
