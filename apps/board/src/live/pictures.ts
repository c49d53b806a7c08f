import type { NamedEdit, SavedState, Stop } from '@loopwright/document';
import type { RoutingId } from '@loopwright/model';
import type { Written } from './follow-document.ts';
import type { Frame } from './frame.ts';
import type { Landing } from './landing.ts';
import type { Others } from './others.ts';
import type { PictureClock } from './picture-clock.ts';
import { openPictureTurns, type PictureTurn } from './picture-turns.ts';
import { openReckoner, type ReckonerParts } from './reckoner.ts';
import { openSlot, type Watched } from './slot.ts';

interface PicturesParts extends ReckonerParts {
  readonly clock: PictureClock;
}

interface Sources {
  readonly others: Pick<Others, 'drags' | 'roster' | 'onNews' | 'takeIn'>;
  readonly written: Pick<Written, 'revision'>;
  readonly saved: Watched<SavedState>;
}

/** The frames of a board: one for each picture the browser shows, and none while nothing changes. */
export interface Pictures {
  readonly frame: Watched<Frame | undefined>;
  readonly stop: Stop;
  /** My drag as the next picture shows it. */
  hold(drag: NamedEdit | undefined): void;
  held(): NamedEdit | undefined;
  /** Something of mine was written. */
  land(landing: Landing): void;
  show(routing: RoutingId): void;
}

export function openPictures(parts: PicturesParts, { others, written, saved }: Sources): Pictures {
  const reckon = openReckoner(parts);
  const frame = openSlot<Frame | undefined>(undefined);
  const turnOf = openPictureTurns();
  let mine: NamedEdit | undefined;
  let routing: RoutingId | undefined;
  let landing: Landing | undefined;
  let joined = false;
  let isDue = true;
  let shownRevision = written.revision.get();
  let waiting: { readonly when: keyof PictureClock; readonly cancel: Stop } | undefined;

  const reckonNow = (turn: PictureTurn) => {
    isDue = false;
    shownRevision = written.revision.get();
    const [drags, company, revision] = [others.drags.get(), others.roster.get(), shownRevision];
    const hands = { mine, others: drags, company, routing, revision, landing, joined };
    landing = undefined;
    joined = saved.get().kind !== 'joining';
    const reckoned = reckon(hands);
    frame.set(reckoned && turn === 'hands' ? { ...reckoned, figuresToCome: true } : reckoned);
  };
  /** Shows the figures of the frame that is there. */
  const tellFigures = () => {
    const { figuresToCome, ...shown } = frame.get() ?? {};
    if (figuresToCome && 'plan' in shown) frame.set(shown);
  };
  const schedule = (when: keyof PictureClock) => {
    if (waiting?.when === 'soon' || waiting?.when === when) return;
    waiting?.cancel();
    waiting = { when, cancel: parts.clock[when](makePicture) };
  };
  const makePicture = () => {
    waiting = undefined;
    const turn = turnOf(others.drags.get().length);
    // A drag that was just written must not be laid over the plan as it was some ticks ago.
    const isWritten = written.revision.get() !== shownRevision;
    const left = turn === 'figures' && !isWritten ? 'more waits' : others.takeIn(isWritten ? 'all' : 'some');
    if (isDue) reckonNow(turn);
    else if (turn === 'figures') tellFigures();
    if (left === 'more waits' || turn === 'hands') schedule('later');
  };
  const due = (when: keyof PictureClock) => {
    isDue = true;
    schedule(when);
  };
  const markDue = () => {
    isDue = true;
  };
  const stops = [
    written.revision.onChange(() => due('later')),
    others.onNews(() => schedule('later')),
    others.drags.onChange(markDue),
  ];
  reckonNow('both');
  return {
    frame,
    stop: () => {
      for (const stop of stops) stop();
      waiting?.cancel();
    },
    hold: (drag) => {
      mine = drag;
      due('soon');
    },
    held: () => mine,
    land: (next) => {
      landing = next;
      due('soon');
    },
    show: (id) => {
      routing = id;
      due('soon');
    },
  };
}
