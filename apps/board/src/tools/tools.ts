import { dragGrip } from './drag-grip.ts';
import { frameHoles } from './frame-holes.ts';
import type { Hit } from './hit.ts';
import { dragLandGrip } from './land/drag-land-grip.ts';
import { holdThing } from './land/hold-thing.ts';
import { moveHole } from './move-hole.ts';
import { movePart } from './move-part.ts';
import { pan } from './pan.ts';
import { select } from './select.ts';
import type { Gesture, Hand, PointerAt, Tool } from './tool.ts';

/** In the order they are asked; the last takes hold of anything. */
const TOOLS: readonly Tool[] = [dragGrip, dragLandGrip, movePart, moveHole, select, holdThing, frameHoles, pan];

/** What a press here begins. */
export function beginGesture(hit: Hit | undefined, at: PointerAt, hand: Hand): Gesture | undefined {
  for (const tool of TOOLS) {
    const gesture = tool.begin(hit, at, hand);
    if (gesture) return gesture;
  }
  return undefined;
}
