import { encodeFrame, encodePresence, LIMITS, type PresenceEntry } from '@loopwright/protocol';
import type { Clock, Stop } from '../clock.ts';
import type { ServerLimits } from '../limits.ts';
import type { Outbox } from './outbox.ts';

/** Somebody in a room, as far as messages go; `client` is the number it speaks for, once known. */
export interface Reader {
  /** What it is called where updates come from. */
  readonly self: object;
  readonly outbox: Outbox;
  client(): number | undefined;
}

/** A committed update and who sent it: they have it already. */
export interface Committed {
  readonly from: object;
  readonly update: Uint8Array;
}

/** How what happens in one room reaches the people in it. */
export interface FanOut {
  /** In order, to everybody but the sender. */
  updates(committed: readonly Committed[]): void;
  /** The newest word of one person, to everybody else. */
  presence(entry: PresenceEntry): void;
  close(): void;
}

export interface FanOutPorts {
  readonly readers: ReadonlySet<Reader>;
  readonly clock: Clock;
  readonly limits: ServerLimits;
}

export type MakeFanOut = (ports: FanOutPorts) => FanOut;

/**
 * Within one process: at once in a small room; in a large one no sooner than some milliseconds after the last message, so
 * that several people's pointers travel in one. What comes after a pause does not wait.
 *
 * Cost: one encoding a flush, plus one for each person whose own word is in it; one send a reader.
 */
export const fanOutHere: MakeFanOut = ({ readers, clock, limits }) => {
  let updates: Committed[] = [];
  let presence = new Map<number, PresenceEntry>();
  let stop: Stop | undefined;
  let flushedAt = Number.NEGATIVE_INFINITY;

  const flush = () => {
    stop = undefined;
    flushedAt = clock.now();
    for (const { from, update } of updates) sendUpdate(readers, from, update);
    if (presence.size > 0) sendPresence(readers, presence);
    updates = [];
    presence = new Map();
  };
  const soon = () => {
    const wait = readers.size <= limits.largeRoom ? 0 : flushedAt + limits.gather - clock.now();
    // Never longer than that, also when the machine's time is set back.
    if (wait > 0) stop ??= clock.after(Math.min(wait, limits.gather), flush);
    else {
      stop?.();
      flush();
    }
  };

  return {
    updates(committed) {
      updates.push(...committed);
      soon();
    },
    presence(entry) {
      presence.set(entry.client, entry);
      soon();
    },
    close: () => stop?.(),
  };
};

function sendUpdate(readers: ReadonlySet<Reader>, from: object, update: Uint8Array): void {
  const frame = encodeFrame({ kind: 'update', update });
  for (const reader of readers) if (reader.self !== from) reader.outbox.send(frame, 'update');
}

function sendPresence(readers: ReadonlySet<Reader>, entries: ReadonlyMap<number, PresenceEntry>): void {
  const frame = presenceFrame([...entries.values()]);
  for (const reader of readers) {
    const own = reader.client();
    if (own === undefined || !entries.has(own)) reader.outbox.send(frame, 'presence');
    else if (entries.size > 1) reader.outbox.send(presenceFrame(othersThan(own, entries)), 'presence');
  }
}

function othersThan(own: number, entries: ReadonlyMap<number, PresenceEntry>): readonly PresenceEntry[] {
  return [...entries.values()].filter(({ client }) => client !== own);
}

/** Several people's presence as one message. */
function presenceFrame(entries: readonly PresenceEntry[]): Uint8Array {
  return encodeFrame({ kind: 'presence', presence: encodePresence(entries) });
}

/** Everybody's presence, for somebody who comes in: as many messages as it takes. */
export function presenceFrames(entries: readonly PresenceEntry[]): readonly Uint8Array[] {
  const frames: Uint8Array[] = [];
  for (let first = 0; first < entries.length; first += LIMITS.mostPresenceEntries)
    frames.push(presenceFrame(entries.slice(first, first + LIMITS.mostPresenceEntries)));
  return frames;
}
