import { type PresenceEntry, parsePresence } from '@loopwright/protocol';
import type { Clock, Stop } from '../clock.ts';
import type { ServerLimits } from '../limits.ts';
import type { FanOut } from './fan-out.ts';
import type { PresenceBoard, Stamp } from './presence-board.ts';
import { openAllowance } from './rate.ts';

/** What one connection tells of itself, on its way to the others. */
export interface Speech {
  /** A presence frame of this connection; what is not its own word is dropped. */
  hear(presence: Uint8Array): void;
  /** Says what was held back, once nothing of this connection waits for the store. */
  release(): void;
  client(): number | undefined;
  end(): void;
}

export interface SpeechPorts {
  readonly holder: object;
  readonly membership: string;
  readonly stamp: Stamp;
  readonly board: PresenceBoard;
  readonly fanOut: FanOut;
  readonly clock: Clock;
  readonly limits: ServerLimits;
  /** Whether an update of this connection is still on its way: presence that follows it waits, so that nothing jumps back. */
  readonly isWaiting: () => boolean;
}

const isWord = (state: unknown): state is Readonly<Record<string, unknown>> =>
  typeof state === 'object' && state !== null && !Array.isArray(state);

export function openSpeech(ports: SpeechPorts): Speech {
  const { board, clock, fanOut, holder, limits, membership, stamp } = ports;
  const allowance = openAllowance(limits.presencePerSecond, limits.presenceBurst, clock.now());
  let client: number | undefined;
  let newest: PresenceEntry | undefined;
  let later: Stop | undefined;

  const release = () => {
    if (newest === undefined || later !== undefined || ports.isWaiting()) return;
    if (allowance.take(1, clock.now())) say();
    else
      later = clock.after(1000 / limits.presencePerSecond, () => {
        later = undefined;
        release();
      });
  };
  const say = () => {
    const word = newest;
    newest = undefined;
    if (!word) return;
    if (isWord(word.state)) tell(board.say(word.client, holder, word.state, stamp));
    else tell(board.leave(word.client, holder));
  };
  const tell = (entry: PresenceEntry | undefined) => {
    if (entry) fanOut.presence(entry);
  };
  /** The first number nobody else uses, and that one from then on. */
  const isOwn = (number: number) => {
    if (client !== undefined && client !== number) return false;
    if (!board.claim(number, holder, membership)) return false;
    client = number;
    return true;
  };

  return {
    hear(presence) {
      const entries = parsePresence(presence);
      if ('kind' in entries) return; // too large, or not JSON: dropped whole
      for (const entry of entries) if (isOwn(entry.client)) newest = entry;
      release();
    },
    release,
    client: () => client,
    end() {
      later?.();
      newest = undefined;
      if (client !== undefined) tell(board.leave(client, holder));
    },
  };
}
