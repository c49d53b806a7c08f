import { type HoleId, holeOf, type PartId, pointToMillimetre } from '@loopwright/model';
import { chosenHoles } from './chosen-holes.ts';
import { dragGesture, type Moving } from './drag-gesture.ts';
import { type Hand, picksFurther, type Tool } from './tool.ts';

/**
 * Takes hold of a tee, a turn point or a green and moves it alone. A press with Alt takes a turn point out. Where
 * several holes are picked out their parts are not taken singly: all of them move.
 */
export const movePart: Tool = {
  name: 'move part',
  begin: (hit, at, hand) => {
    if (hit?.kind !== 'part' || picksFurther(at)) return undefined;
    const { hole, part } = hit;
    const chosen = chosenHoles(hand.routing, hand.selection);
    if (chosen.length > 1 && chosen.includes(hole)) return undefined;
    const moving: Moving = {
      holds: [{ hole, parts: [part] }],
      selects: { hole },
      editFor: (way) => ({
        edit: 'move part' as const,
        routing: hand.routing.id,
        hole,
        part,
        to: pointToMillimetre({ x: hit.at.x + way.x, y: hit.at.y + way.y }),
      }),
      click: (end) => {
        if (end.alt && isTurn(part)) takeOutTurn(hand, hole, part);
        else hand.select({ hole, part });
      },
    };
    return dragGesture(moving, at, hand);
  },
};

/** Takes a turn point out: the hole plays straight on there. A pinned one asks, a locked routing says so. */
export function takeOutTurn(hand: Hand, hole: HoleId, part: PartId): void {
  const { routing } = hand;
  if (routing.locked) hand.sayLocked();
  else if (holeOf(routing, hole)?.pinned.includes(part)) hand.askAboutPin(hole, [part]);
  else hand.edit({ edit: 'remove turn point', routing: routing.id, hole, turn: part.slice('turn:'.length) });
}

export const isTurn = (part: PartId): boolean => part.startsWith('turn:');
