import { pointToMillimetre } from '@loopwright/model';
import { dragGesture } from './drag-gesture.ts';
import type { Tool } from './tool.ts';

/** Takes hold of a tee, a turn point or a green and moves it alone. */
export const movePart: Tool = {
  name: 'move part',
  begin: (hit, at, hand) => {
    if (hit?.kind !== 'part') return undefined;
    const { hole, part } = hit;
    const moving = {
      hole,
      parts: [part],
      editFor: (way: { readonly x: number; readonly y: number }) => ({
        edit: 'move part' as const,
        routing: hand.routing.id,
        hole,
        part,
        to: pointToMillimetre({ x: hit.at.x + way.x, y: hit.at.y + way.y }),
      }),
      click: () => hand.select({ hole, part }),
    };
    return dragGesture(moving, at, hand);
  },
};
