import type { SitePoint } from '@loopwright/model';
import type { Watched } from '../live/slot.ts';
import { useWatched } from '../live/use-watched.ts';
import { toCanvas, type View } from './site-transform.ts';

interface FrameShownProps {
  readonly corners: Watched<readonly [SitePoint, SitePoint] | undefined>;
  readonly view: View;
}

/** The frame being drawn to pick out holes. */
export function FrameShown({ corners, view }: FrameShownProps) {
  const drawn = useWatched(corners);
  if (!drawn) return null;
  const [one, other] = [toCanvas(view, drawn[0]), toCanvas(view, drawn[1])];
  return (
    <div
      className="plan__frame"
      data-testid="frame"
      style={{
        left: Math.min(one.x, other.x),
        top: Math.min(one.y, other.y),
        width: Math.abs(one.x - other.x),
        height: Math.abs(one.y - other.y),
      }}
    />
  );
}
