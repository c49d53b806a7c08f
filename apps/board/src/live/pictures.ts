import type { NamedEdit, SavedState, Stop } from '@loopwright/document';
import type { RoutingId } from '@loopwright/model';
import type { Written } from './follow-document.ts';
import type { Frame } from './frame.ts';
import type { Landing } from './landing.ts';
import type { Others } from './others.ts';
import { openReckoner, type ReckonerParts } from './reckoner.ts';
import { openSlot, type Watched } from './slot.ts';

interface PicturesParts extends ReckonerParts {
  readonly beforeNextPicture: (work: () => void) => Stop;
}

interface Sources {
  readonly others: Pick<Others, 'drags' | 'roster'>;
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
  let mine: NamedEdit | undefined;
  let routing: RoutingId | undefined;
  let landing: Landing | undefined;
  let joined = false;
  let cancel: Stop | undefined;
  const reckonNow = () => {
    cancel = undefined;
    const company = others.roster.get();
    const revision = written.revision.get();
    const hands = { mine, others: others.drags.get(), company, routing, revision, landing, joined };
    landing = undefined;
    joined = saved.get().kind !== 'joining';
    frame.set(reckon(hands));
  };
  const schedule = () => {
    cancel ??= parts.beforeNextPicture(reckonNow);
  };
  const stops = [written.revision.onChange(schedule), others.drags.onChange(schedule)];
  reckonNow();
  return {
    frame,
    stop: () => {
      for (const stop of stops) stop();
      cancel?.();
    },
    hold: (drag) => {
      mine = drag;
      schedule();
    },
    held: () => mine,
    land: (next) => {
      landing = next;
      schedule();
    },
    show: (id) => {
      routing = id;
      schedule();
    },
  };
}
