import type { HoleId, PartId } from '@loopwright/model';
import type { Selection } from '../board/parts.ts';
import type { BoardSession } from '../live/board-session.ts';
import { openSlot, type Slot, type Watched } from '../live/slot.ts';
import { chosenHoles, withOrWithout } from '../tools/chosen-holes.ts';
import type { HoleAct, HoleQuestion } from './menu-entry.ts';

/** A menu that lies open: where on the window, and what was under the pointer. */
export interface OpenMenu {
  readonly at: { readonly x: number; readonly y: number };
  readonly part?: PartId;
}

/** What is being asked of the person before something is done with a hole. */
export type Asking =
  | { readonly kind: 'which hole'; readonly question: HoleQuestion }
  | { readonly kind: 'several' }
  | { readonly kind: 'length'; readonly hole: HoleId };

/** The hands that do things with holes by menu, and wait for the person to point at another one. */
export interface HoleHands {
  readonly menu: Slot<OpenMenu | undefined>;
  readonly asking: Watched<Asking | undefined>;
  /** Whether a press on a hole answers a question. */
  picks(): boolean;
  /** Picks out, or answers what is being asked. */
  select(selection: Selection): void;
  /** Opens the menu for what is picked out, with this hole if it was not among it; bare paper has no menu. */
  open(at: OpenMenu['at'], under?: { readonly hole: HoleId; readonly part?: PartId }): void;
  act(act: HoleAct): void;
  /** Answers the question with a hole from the list. */
  answer(hole: HoleId): void;
  /** Puts the question away; whether there was one. */
  letGo(): boolean;
}

interface HoleHandsParts {
  readonly session: Pick<BoardSession, 'frame' | 'selection' | 'select' | 'edit' | 'say' | 'sayLocked'>;
  readonly take: (instrument: Extract<HoleAct, { readonly do: 'take' }>['instrument']) => void;
}

export function openHoleHands({ session, take }: HoleHandsParts): HoleHands {
  const menu = openSlot<OpenMenu | undefined>(undefined);
  const asking = openSlot<Asking | undefined>(undefined);
  const routing = () => session.frame.get()?.routing;

  const answer = (hole: HoleId) => {
    const asked = asking.get();
    if (asked?.kind !== 'which hole') return;
    const { question } = asked;
    if (!question.choices.some((choice) => choice.hole === hole)) {
      session.say(hole === question.hole ? 'That is the same hole: point at another one.' : 'That hole cannot be it.');
      return;
    }
    asking.set(undefined);
    const edit = question.editFor(hole);
    if (edit) session.edit(edit);
    else session.say('It is so already.');
  };
  const select = (selection: Selection) => {
    const asked = asking.get();
    const { hole } = selection;
    if (asked?.kind === 'which hole' && hole !== undefined) return answer(hole);
    const now = routing();
    // Bare paper lets nothing go while several are being picked out: a finger misses easily.
    if (asked?.kind === 'several' && hole === undefined) return undefined;
    if (asked?.kind === 'several' && hole !== undefined && now && !selection.also) {
      return session.select(withOrWithout(now, session.selection.get(), hole));
    }
    return session.select(selection);
  };
  return {
    menu,
    asking,
    picks: () => asking.get() !== undefined,
    select,
    answer,
    open: (at, under) => {
      const now = routing();
      if (!now) return;
      const chosen = chosenHoles(now, session.selection.get());
      if (under && !chosen.includes(under.hole)) session.select({ hole: under.hole });
      if (!under && chosen.length === 0) return;
      const part = under?.part ?? session.selection.get().part;
      menu.set({ at, ...(part === undefined ? {} : { part }) });
    },
    act: (act) => {
      menu.set(undefined);
      const now = routing();
      if (act.do === 'choose several') asking.set({ kind: 'several' });
      else if (now?.locked) session.sayLocked();
      else if (act.do === 'ask') asking.set({ kind: 'which hole', question: act.question });
      else if (act.do === 'lengthen') asking.set({ kind: 'length', hole: act.hole });
      else if (act.do === 'take') {
        if (act.select) session.select(act.select);
        take(act.instrument);
      } else if (session.edit(act.edit) === 'done' && act.select) session.select(act.select);
    },
    letGo: () => {
      const was = asking.get() !== undefined;
      asking.set(undefined);
      return was;
    },
  };
}

/** A place on the window for a menu that was opened by a key: at the hole's number, else in the middle. */
export function placeForKey(
  box: { readonly left: number; readonly top: number; readonly width: number; readonly height: number },
  onCanvas: { readonly x: number; readonly y: number } | undefined,
): OpenMenu['at'] {
  const inside = (value: number, room: number) => Math.min(Math.max(value, 8), Math.max(room - 8, 8));
  const at = onCanvas ?? { x: box.width / 2, y: box.height / 2 };
  return { x: box.left + inside(at.x, box.width), y: box.top + inside(at.y, box.height) };
}
