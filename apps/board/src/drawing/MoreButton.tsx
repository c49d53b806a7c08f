import type { SitePoint } from '@loopwright/model';
import { Button } from 'react-aria-components';
import { type CanvasSize, toCanvas, type View } from './site-transform.ts';

interface MoreButtonProps {
  readonly at: SitePoint;
  readonly view: View;
  readonly size: CanvasSize;
  /** What is picked out: 'hole 6', 'holes 3 and 7'. */
  readonly words: string;
  readonly onMore: (at: { readonly x: number; readonly y: number }) => void;
}

/** The visible way to the menu of what is picked out, beside its number; not shown where that is out of view. */
export function MoreButton({ at, view, size, words, onMore }: MoreButtonProps) {
  const { x, y } = toCanvas(view, at);
  if (x < 0 || y < 0 || x > size.width || y > size.height) return null;
  return (
    <Button
      className="plan__more"
      style={{ left: x, top: y }}
      aria-label={`More: what can be done with ${words}`}
      aria-haspopup="menu"
      onPress={({ target }) => {
        const box = target.getBoundingClientRect();
        onMore({ x: box.left, y: box.bottom });
      }}
    >
      ⋯
    </Button>
  );
}
