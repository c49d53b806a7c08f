import type { CanvasPoint } from '@loopwright/model';
import type { CanvasSize } from './site-transform.ts';

/** Pixels that words at the pointer take at most, and a little more. */
const ROOM = { across: 320, down: 110 };

/** Where words stand beside the pointer, never under it; on the other side near the edge, always on the drawing. */
export function besidePointer(pointer: CanvasPoint, size: CanvasSize): string {
  const at = { x: Math.min(Math.max(pointer.x, 0), size.width), y: Math.min(Math.max(pointer.y, 0), size.height) };
  const across = at.x > size.width - ROOM.across ? `calc(${at.x - 18}px - 100%)` : `${at.x + 20}px`;
  const down = at.y > size.height - ROOM.down ? `calc(${at.y - 14}px - 100%)` : `${at.y + 18}px`;
  return `translate(${across}, ${down})`;
}
