import type { Person, Presence, Stop } from '@loopwright/document';
import { dragsOf, type LiveDrag } from './frame.ts';
import { sameDrags, sameRoster } from './roster.ts';
import { openSlot, type Watched } from './slot.ts';
import { openTurns } from './turns.ts';

/** Everybody else on the board, in the three ways views and frames ask for them. */
export interface Others {
  /** With pointer and drag, as often as they move. */
  readonly people: Watched<readonly Person[]>;
  /** Changes only when somebody comes, goes, selects or starts and ends a drag. */
  readonly roster: Watched<readonly Person[]>;
  readonly drags: Watched<readonly LiveDrag[]>;
  /** Something was said since: to be taken in at the next picture. */
  readonly onNews: (listener: () => void) => Stop;
  /**
   * Takes in what was said, once a picture: `some` leaves drags that go on for the picture after when there are many.
   * Tells whether something waits still.
   */
  readonly takeIn: (how: 'all' | 'some') => 'all taken in' | 'more waits';
}

/** Follows presence; a pointer that moves leaves roster and drags as they are. */
export function followOthers(presence: Pick<Presence, 'others' | 'onChange'>): Others {
  const people = openSlot<readonly Person[]>(presence.others());
  const roster = openSlot<readonly Person[]>(people.get());
  const drags = openSlot<readonly LiveDrag[]>(dragsOf(people.get()));
  const turns = openTurns();
  return {
    people,
    roster,
    drags,
    onNews: presence.onChange,
    takeIn: (how) => {
      const said = presence.others();
      const now = how === 'all' ? said : turns.take(people.get(), said);
      people.set(now);
      if (!sameRoster(roster.get(), now)) roster.set(now);
      const held = dragsOf(now);
      if (!sameDrags(drags.get(), held)) drags.set(held);
      return now === said ? 'all taken in' : 'more waits';
    },
  };
}
