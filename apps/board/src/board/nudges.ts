import type { PartId } from '@loopwright/model';
import { nudgeEdit, partsInPlay } from '../tools/nudge.ts';
import { chosenHole, type KeyHand } from './key-actions.ts';

/** Pixels an arrow moves the paper when nothing is picked out. */
const PAN_STEP = 60;

/** Arrow keys, held or one after the other: a live drag while a key is down, one step when all are up. */
export interface Nudges {
  nudge(x: number, y: number): void;
  drop(): void;
  /** Puts back what is being nudged; whether anything was. */
  letGo(): boolean;
}

export function openNudges(hand: () => KeyHand): Nudges {
  let way: { readonly x: number; readonly y: number } | undefined;
  return {
    nudge: (x, y) => {
      const { session, viewpoint, askAboutPin } = hand();
      const hole = chosenHole(session);
      const routing = session.frame.get()?.routing;
      if (!hole || !routing) return viewpoint.pan({ x: -x * PAN_STEP, y: y * PAN_STEP });
      if (routing.locked) return session.sayLocked();
      const selection = session.selection.get();
      const parts: readonly PartId[] = selection.part === undefined ? partsInPlay(hole) : [selection.part];
      const pinned = parts.filter((part) => hole.pinned.includes(part));
      if (pinned.length > 0) return askAboutPin(hole.id, pinned);
      // From where it is written to lie: the plan shown has the way so far in it already.
      const written = session.writtenPlan.get().routings.find(({ id }) => id === routing.id) ?? routing;
      way = { x: (way?.x ?? 0) + x, y: (way?.y ?? 0) + y };
      const edit = nudgeEdit(written, selection, way);
      if (edit) return session.drag(edit);
      way = undefined;
      return undefined;
    },
    drop: () => {
      if (!way) return;
      way = undefined;
      hand().session.drop();
    },
    letGo: () => {
      if (!way) return false;
      way = undefined;
      hand().session.drag(undefined);
      return true;
    },
  };
}
