import type { RoomDocument } from '@loopwright/document/server';
import {
  CLOSE_CODES,
  type CloseName,
  encodeFrame,
  type Frame,
  LIMITS,
  MESSAGE,
  parseFrame,
  type RefusalCode,
} from '@loopwright/protocol';
import type { Clock } from '../clock.ts';
import type { ServerLimits } from '../limits.ts';
import type { CommitQueue } from './commit-queue.ts';
import { presenceFrames } from './fan-out.ts';
import { type Intake, openIntake } from './intake.ts';
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

const CLOSE_FOR: Readonly<Record<RefusalCode, CloseName>> = {
  'not-a-writer': 'not-a-writer',
  malformed: 'malformed',
  'too-large': 'too-large',
  'unknown-root': 'edit-refused',
  'bad-key': 'edit-refused',
  'bad-value': 'edit-refused',
};

/** The protocol of one connection: PROTOCOL.md, rules F, J, S, X and P. */
export function openConnection(ports: ConnectionPorts): { readonly connection: Connection; readonly speech: Speech } {
  const { document, outbox, queue, self } = ports;
  let open = true;

  const send = (frame: Frame, kind: 'sync' | 'committed' | 'refused') => outbox.send(encodeFrame(frame), kind);
  const sayStep1 = () => send({ kind: 'step 1', vector: document.vector() }, 'sync');
  const sayCount = () => send({ kind: 'committed', count: intake.count() }, 'committed');
  const sayEverybody = () => {
    for (const frame of presenceFrames(ports.presence.everybody())) outbox.send(frame, 'presence');
  };
  const close = (reason: CloseName) => {
    if (!open) return;
    open = false;
    intake.stop();
    queue.forget(self);
    outbox.close(CLOSE_CODES[reason]);
  };
  const refuse = (code: RefusalCode, frame: number) => {
    if (!open) return;
    send({ kind: 'refused', code, frame }, 'refused');
    ports.onRefused(code);
    close(CLOSE_FOR[code]);
  };
  const intake: Intake = openIntake({
    ...ports,
    onStored: sayCount,
    onTold: () => speech.release(),
    onEarly: sayStep1,
    onRefused: refuse,
    close,
  });
  const speech = ports.speech(intake.isWaiting);

  const isTooMuch = openMeter(ports);
  const receive = (message: Uint8Array) => {
    if (!open) return;
    if (isTooMuch(message)) return close('too-many-messages');
    if (message.length > LIMITS.mostFrameBytes) return refuse('too-large', intake.next());
    const frame = parseFrame(message);
    if (frame.kind === 'presence') speech.hear(frame.presence);
    else if (frame.kind === 'step 1') send({ kind: 'step 2', update: document.missing(frame.vector) }, 'sync');
    else if (frame.kind === 'step 2' || frame.kind === 'update') intake.take(frame.kind, frame.update);
    else if (frame.kind === 'ask presence') sayEverybody();
    else close('malformed'); // rubbish, or what only the server says
  };
  const greet = () => {
    sayStep1();
    sayEverybody();
  };
  const gone = () => {
    open = false;
    intake.stop();
    speech.end();
  };
  return { connection: { greet, receive, beat: sayCount, close, gone }, speech };
}

/** Tells when a connection sends more than a person can; presence, which is said often and costs little, is counted apart. */
function openMeter({ clock, limits }: ConnectionPorts): (message: Uint8Array) => boolean {
  const frames = openAllowance(limits.framesPerSecond, limits.frameBurst, clock.now());
  const presence = openAllowance(limits.presenceFramesPerSecond, limits.presenceFrameBurst, clock.now());
  const bytes = openAllowance(limits.bytesPerSecond, limits.byteBurst, clock.now());
  return (message) => {
    const counted = message[0] === MESSAGE.presence ? presence : frames;
    return !counted.take(1, clock.now()) || !bytes.take(message.length, clock.now());
  };
}
