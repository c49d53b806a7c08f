import type { SitePoint } from '@loopwright/model';
import { nudgeThing } from '../tools/land/nudge-thing.ts';
import { refusedOutline } from '../tools/land/refused-outline.ts';
import { type Nudging, nudgeOf } from '../tools/nudge.ts';
import { pinnedAmong } from '../tools/pinned-among.ts';
import { refusalOf } from '../tools/refusal.ts';
import type { KeyHand } from './key-actions.ts';

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
  let held: { readonly nudging: Nudging; readonly way: SitePoint } | undefined;
  const put = (nudging: Nudging, way: SitePoint) => {
    const { session } = hand();
    const routing = session.frame.get()?.routing;
    const edit = nudging.editFor(way);
    const written = session.writtenPlan.get().site;
    const refused = edit && ((routing && refusalOf(routing, edit)) ?? refusedOutline(written, edit));
    if (refused !== undefined) return session.say(refused);
    held = { nudging, way };
    return session.drag(edit);
  };
  return {
    nudge: (x, y) => {
      const { session, viewpoint, askAboutPin } = hand();
      if (held) return put(held.nudging, { x: held.way.x + x, y: held.way.y + y });
      const frame = session.frame.get();
      const selection = session.selection.get();
      const nudging = frame && (nudgeOf(frame, selection) ?? nudgeThing(frame.plan.site, selection));
      if (!frame || !nudging) return viewpoint.pan({ x: -x * PAN_STEP, y: y * PAN_STEP });
      if (nudging.of === 'routing' && frame.routing.locked) return session.sayLocked();
      const [first, ...further] = pinnedAmong(frame.routing, nudging.holds);
      if (first) return askAboutPin(first.hole, first.parts, further);
      return put(nudging, { x, y });
    },
    drop: () => {
      if (!held) return;
      const { session } = hand();
      const { vertex } = session.selection.get();
      const edit = held.nudging.editFor(held.way);
      held = undefined;
      if (session.drop() !== 'done' || !vertex || edit?.edit !== 'move vertex') return;
      session.select({ ...session.selection.get(), vertex: { ...vertex, at: edit.to } });
    },
    letGo: () => {
      if (!held) return false;
      held = undefined;
      hand().session.drag(undefined);
      return true;
    },
  };
}
