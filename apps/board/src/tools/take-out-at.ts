import { holeOf } from '@loopwright/model';
import { takeOutWaypoint } from './drag-grip.ts';
import type { Hit } from './hit.ts';
import { isTurn, takeOutTurn } from './move-part.ts';
import type { Hand } from './tool.ts';

/** What a double press on the drawing takes out: a turn point, or a point of a walk. Anything else stays. */
export function takeOutAt(hit: Hit | undefined, hand: Hand): void {
  if (hit?.kind === 'part' && isTurn(hit.part)) takeOutTurn(hand, hit.hole, hit.part);
  if (hit?.kind !== 'grip' || hit.grip.kind !== 'waypoint') return;
  const hole = holeOf(hand.routing, hit.hole);
  if (hole) takeOutWaypoint(hand, hole, hit.grip.index);
}
