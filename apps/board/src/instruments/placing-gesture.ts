import { type Gesture, hasTravelled, type PointerAt } from '../tools/tool.ts';

export interface Placing {
  /** What was placed by the press goes along with the pointer. */
  moveTo(at: PointerAt): void;
  /** The press was taken away: nothing was placed. */
  putBack(): void;
  /** The pointer was let go, after a drag or on the spot. */
  letGo?(how: 'dragged' | 'on the spot'): void;
}

/** A press that has placed something at once, and lets a finger that cannot hover carry it on to where it is meant. */
export function placingGesture(start: PointerAt, placing: Placing): Gesture {
  let how: 'on the spot' | 'dragged' = 'on the spot';
  return {
    cursor: 'crosshair',
    move: (at) => {
      if (hasTravelled(start, at)) how = 'dragged';
      if (how === 'dragged') placing.moveTo(at);
    },
    end: () => placing.letGo?.(how),
    cancel: () => placing.putBack(),
  };
}
