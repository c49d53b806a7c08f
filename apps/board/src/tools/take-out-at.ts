import { holeOf } from '@loopwright/model';
import { takeOutWaypoint } from './drag-grip.ts';
import type { Hit } from './hit.ts';
import { removeVertex } from './land/drag-land-grip.ts';
import { isTurn, takeOutTurn } from './move-part.ts';
import type { Hand } from './tool.ts';

/** What a double press on the drawing takes out: a turn point, a point of a walk, or a vertex. Anything else stays. */
export function takeOutAt(hit: Hit | undefined, hand: Hand): void {
  if (hit?.kind === 'part' && isTurn(hit.part)) takeOutTurn(hand, hit.hole, hit.part);
  if (hit?.kind === 'vertex') removeVertex(hand, hit);
  if (hit?.kind !== 'grip' || hit.grip.kind !== 'waypoint') return;
  const hole = holeOf(hand.routing, hit.hole);
  if (hole) takeOutWaypoint(hand, hole, hit.grip.index);
}
