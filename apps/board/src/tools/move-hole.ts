import { holeOf, type PartId, pointToMillimetre } from '@loopwright/model';
import { dragGesture } from './drag-gesture.ts';
import type { Tool } from './tool.ts';

/** Takes hold of a hole by its number or its centreline and moves all of it. */
export const moveHole: Tool = {
  name: 'move hole',
  begin: (hit, at, hand) => {
    if (hit?.kind !== 'number' && hit?.kind !== 'centreline') return undefined;
    const { hole } = hit;
    const found = holeOf(hand.routing, hole);
    if (!found) return undefined;
    const tees = Object.keys(found.tees).map((teeSet): PartId => `tee:${teeSet}`);
    const turns = found.turnPoints.map((turn): PartId => `turn:${turn.id}`);
    const moving = {
      hole,
      parts: [...tees, ...turns, 'green' as const],
      editFor: (by: { readonly x: number; readonly y: number }) => ({
        edit: 'move hole' as const,
        routing: hand.routing.id,
        hole,
        by: pointToMillimetre(by),
      }),
      click: () => hand.select({ hole }),
    };
    return dragGesture(moving, at, hand);
  },
};
