import type { RoomDocument } from '@loopwright/document/server';
import {
  CLOSE_CODES,
  type CloseName,
  encodeFrame,
  type Frame,
  parseFrame,
  type RefusalCode,
} from '@loopwright/protocol';
import type { Clock } from '../clock.ts';
import type { ServerLimits } from '../limits.ts';
import type { CommitQueue, Outcome } from './commit-queue.ts';
import { openDurableCount } from './durable-count.ts';
import { presenceFrames } from './fan-out.ts';
import type { Outbox } from './outbox.ts';
import type { PresenceBoard } from './presence-board.ts';
import { openAllowance } from './rate.ts';
import type { Speech } from './speech.ts';

/** One open page, as its room deals with it. */
export interface Connection {
  /** Says what the room holds and who is here. */
  greet(): void;
  receive(bytes: Uint8Array): void;
  /** Repeats the durable count. */
  beat(): void;
  close(reason: CloseName): void;
  /** The socket is gone: what was offered still goes in, what was held does not. */
  gone(): void;
  /** Whether something of it waits for the store or for its first step 2. */
  isWaiting(): boolean;
}

export interface ConnectionPorts {
  /** Names the connection in the queue and the fan-out. */
  readonly self: object;
  readonly rights: 'read' | 'write';
  readonly document: RoomDocument;
  readonly queue: CommitQueue;
  readonly outbox: Outbox;
  readonly presence: PresenceBoard;
  /** Made by the room once the connection can tell whether it waits. */
  readonly speech: (isWaiting: () => boolean) => Speech;
  /** Its edits were refused: the browser's copy must not be used again. */
  readonly onRefused: (code: RefusalCode) => void;
  readonly clock: Clock;
  readonly limits: ServerLimits;
}

/** A client that cannot mend its gap in so many answers never will. */
const MOST_FRESH_STARTS = 8;

const CLOSE_FOR: Readonly<Record<RefusalCode, CloseName>> = {
  'not-a-writer': 'not-a-writer',
  malformed: 'malformed',
  'too-large': 'too-large',
  'unknown-root': 'edit-refused',
  'bad-key': 'edit-refused',
  'bad-value': 'edit-refused',
};

interface Numbered {
  readonly frame: number;
  readonly kind: 'step 2' | 'update';
  readonly update: Uint8Array;
}

/** The protocol of one connection: PROTOCOL.md, rules J, S, X and P. */
export function openConnection(ports: ConnectionPorts): { readonly connection: Connection; readonly speech: Speech } {
  const { clock, document, limits, outbox, queue, self } = ports;
  const frames = openAllowance(limits.framesPerSecond, limits.frameBurst, clock.now());
  const bytes = openAllowance(limits.bytesPerSecond, limits.byteBurst, clock.now());
  const durable = openDurableCount();
  let numbered = 0;
  let waiting = 0;
  let held: Numbered[] | undefined = [];
  let freshStarts = 0;
  let open = true;

  const isWaiting = () => waiting > 0 || (held !== undefined && held.length > 0);
  const speech = ports.speech(isWaiting);
  const send = (frame: Frame, kind: 'sync' | 'committed' | 'refused') => outbox.send(encodeFrame(frame), kind);
  const sayStep1 = () => send({ kind: 'step 1', vector: document.vector() }, 'sync');
  const sayCount = () => send({ kind: 'committed', count: durable.count() }, 'committed');

  const close = (reason: CloseName) => {
    if (!open) return;
    open = false;
    held = undefined;
    queue.forget(self);
    outbox.close(CLOSE_CODES[reason]);
  };

  const refuse = (code: RefusalCode, frame: number) => {
    if (!open) return;
    send({ kind: 'refused', code, frame }, 'refused');
    ports.onRefused(code);
    close(CLOSE_FOR[code]);
  };

  const settle = ({ frame, kind }: Numbered, outcome: Outcome) => {
    waiting -= 1;
    if (outcome.kind === 'refused') return refuse(outcome.code, frame);
    if (outcome.kind === 'failed') return close('not-saved');
    if (outcome.kind === 'early') {
      durable.early(frame);
      freshStarts += 1;
      return freshStarts > MOST_FRESH_STARTS ? close('edit-refused') : sayStep1();
    }
    if (kind === 'step 2') durable.caughtUp(frame);
    else durable.stored(frame);
    if (kind === 'step 2') freshStarts = 0;
    sayCount();
    speech.release();
  };

  const offer = (item: Numbered) => {
    waiting += 1;
    if (waiting > limits.updatesWaiting) return close('busy');
    const { rights } = ports;
    queue.offer({ from: self, update: item.update, rights, settle: (outcome) => settle(item, outcome) });
  };

  const take = (kind: Numbered['kind'], update: Uint8Array) => {
    numbered += 1;
    const item: Numbered = { frame: numbered, kind, update };
    if (kind === 'update' && held !== undefined) {
      held.push(item);
      if (held.length > limits.updatesWaiting) close('too-many-messages');
      return;
    }
    offer(item);
    const after = held;
    held = undefined;
    for (const later of after ?? []) offer(later);
  };

  const answer = (vector: Uint8Array) => {
    const update = document.missing(vector);
    send({ kind: 'step 2', update }, 'sync');
  };

  const sayEverybody = () => {
    for (const frame of presenceFrames(ports.presence.everybody())) outbox.send(frame, 'presence');
  };

  const receive = (message: Uint8Array) => {
    if (!open) return;
    const frame = parseFrame(message);
    if (frame.kind === 'presence') return speech.hear(frame.presence);
    if (!frames.take(1, clock.now()) || !bytes.take(message.length, clock.now())) return close('too-many-messages');
    if (frame.kind === 'step 1') return answer(frame.vector);
    if (frame.kind === 'step 2' || frame.kind === 'update') return take(frame.kind, frame.update);
    if (frame.kind === 'ask presence') return sayEverybody();
    close('malformed'); // rubbish, or what only the server says
  };

  const connection: Connection = {
    greet() {
      sayStep1();
      sayEverybody();
    },
    receive,
    beat: sayCount,
    close,
    gone() {
      open = false;
      held = undefined;
      speech.end();
    },
    isWaiting,
  };
  return { connection, speech };
}
