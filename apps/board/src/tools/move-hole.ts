import { holeOf, pointToMillimetre, type SitePoint } from '@loopwright/model';
import { chosenHoles, withOrWithout } from './chosen-holes.ts';
import { dragGesture, type Moving } from './drag-gesture.ts';
import { partsInPlay } from './nudge.ts';
import { type Hand, type PointerAt, picksFurther, type Tool } from './tool.ts';

/**
 * Takes hold of a hole by its number or its centreline and moves all of it; one of several picked out, by whatever of
 * it, moves them all. A press with Shift, Ctrl or Cmd picks out one more, or one less.
 */
export const moveHole: Tool = {
  name: 'move hole',
  begin: (hit, at, hand) => {
    if (hit?.kind !== 'number' && hit?.kind !== 'centreline' && hit?.kind !== 'part') return undefined;
    const { hole } = hit;
    if (!holeOf(hand.routing, hole)) return undefined;
    const click = (end: PointerAt) =>
      hand.select(picksFurther(end) ? withOrWithout(hand.routing, hand.selection, hole) : { hole });
    const chosen = chosenHoles(hand.routing, hand.selection);
    const several = chosen.length > 1 && chosen.includes(hole);
    return dragGesture(several ? movingAll(chosen, hand, click) : movingOne(hole, hand, click), at, hand);
  },
};

function movingOne(hole: string, hand: Hand, click: Moving['click']): Moving {
  return {
    holds: heldBy(hand, [hole]),
    selects: { hole },
    editFor: (by) => ({ edit: 'move hole', routing: hand.routing.id, hole, by: pointToMillimetre(by) }),
    click,
  };
}

function movingAll(holes: readonly string[], hand: Hand, click: Moving['click']): Moving {
  return {
    holds: heldBy(hand, holes),
    editFor: (by: SitePoint) => ({ edit: 'move holes', routing: hand.routing.id, holes, by: pointToMillimetre(by) }),
    click,
  };
}

const heldBy = ({ routing }: Hand, holes: readonly string[]) =>
  holes.flatMap((id) => {
    const hole = holeOf(routing, id);
    return hole ? [{ hole: id, parts: partsInPlay(hole) }] : [];
  });
