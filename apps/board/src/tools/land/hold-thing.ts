import type { Selection } from '../../board/parts.ts';
import { dragGesture } from '../drag-gesture.ts';
import { pan } from '../pan.ts';
import { type Hand, hasTravelled, type PointerAt, picksFurther, type Tool } from '../tool.ts';
import type { ThingHit } from './hit-site.ts';
import { thingMover } from './move-thing.ts';

/**
 * Takes hold of something on the land. Its sign is dragged about; a line, or an area under an empty hand, is only picked
 * out by a press, and dragging there moves the paper: nobody moves a wetland by accident.
 */
export const holdThing: Tool = {
  name: 'hold thing',
  begin: (hit, at, hand) => {
    if (hit?.kind !== 'thing' || picksFurther(at)) return undefined;
    const selects: Selection = { thing: hit.thing };
    if (hit.by !== 'sign') return overThePaper(hit, at, hand);
    const mover = thingMover(hand.site, hit.thing);
    if (!mover) return undefined;
    return dragGesture({ of: 'site', holds: [], selects, editFor: mover, click: () => hand.select(selects) }, at, hand);
  },
};

function overThePaper(hit: ThingHit, start: PointerAt, hand: Hand) {
  const paper = pan.begin(undefined, start, { ...hand, select: () => undefined });
  return (
    paper && {
      ...paper,
      end: (at: PointerAt) => {
        paper.end(at);
        if (!hasTravelled(start, at)) hand.select({ thing: hit.thing });
      },
    }
  );
}
