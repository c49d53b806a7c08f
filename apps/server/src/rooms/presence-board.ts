import type { PresenceEntry } from '@loopwright/protocol';
import type { Clock } from '../clock.ts';

/** What everybody else is told about whoever speaks; set by the server alone. */
export interface Stamp {
  readonly name: string;
  readonly ink: number;
}

/** Everybody's newest word in one room. Never stored. */
export interface PresenceBoard {
  /**
   * Whether this holder may speak for a client number: nobody else does, or the same person did through an earlier
   * connection, which then falls silent.
   */
  claim(client: number, holder: object, membership: string): boolean;
  /** The entry as the others get it; undefined when the holder no longer speaks for that number. */
  say(
    client: number,
    holder: object,
    state: Readonly<Record<string, unknown>>,
    stamp: Stamp,
  ): PresenceEntry | undefined;
  /** What to tell the others when a holder says it has left, or its connection ended. */
  leave(client: number, holder: object): PresenceEntry | undefined;
  everybody(): readonly PresenceEntry[];
}

interface Place {
  readonly holder: object;
  readonly membership: string;
  readonly entry?: PresenceEntry;
}

/**
 * Clocks are the server's own and only grow, even over a restart: whoever comes back with the clock it left with would
 * else stay unseen until its next word.
 */
export function openPresenceBoard(clock: Clock): PresenceBoard {
  const places = new Map<number, Place>();
  let last = 0;
  const tick = () => {
    last = Math.max(last + 1, clock.now());
    return last;
  };
  const heldBy = (client: number, holder: object) => {
    const place = places.get(client);
    return place?.holder === holder ? place : undefined;
  };
  return {
    claim(client, holder, membership) {
      const place = places.get(client);
      if (place && place.holder !== holder && place.membership !== membership) return false;
      places.set(client, { ...place, holder, membership });
      return true;
    },
    say(client, holder, state, stamp) {
      const place = heldBy(client, holder);
      if (!place) return undefined;
      const entry = { client, clock: tick(), state: { ...state, ...stamp } };
      places.set(client, { ...place, entry });
      return entry;
    },
    leave(client, holder) {
      const place = heldBy(client, holder);
      if (!place) return undefined;
      places.delete(client);
      return place.entry && { client, clock: tick(), state: null };
    },
    everybody: () => [...places.values()].flatMap(({ entry }) => entry ?? []),
  };
}
