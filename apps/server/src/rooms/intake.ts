import type { CloseName, RefusalCode } from '@loopwright/protocol';
import type { ServerLimits } from '../limits.ts';
import type { CommitQueue, Outcome } from './commit-queue.ts';
import { openDurableCount } from './durable-count.ts';

/** The updates of one connection on their way into the room, numbered in the order sent (rules J2 and S of PROTOCOL.md). */
export interface Intake {
  take(kind: 'step 2' | 'update', update: Uint8Array): void;
  /** Whether something waits for the store, or for the first step 2. */
  isWaiting(): boolean;
  /** The number of the next frame. */
  next(): number;
  /** The durable count. */
  count(): number;
  /** Takes nothing any more; what was held is left out. */
  stop(): void;
}

export interface IntakePorts {
  /** Names the connection in the queue. */
  readonly self: object;
  readonly rights: 'read' | 'write';
  readonly queue: CommitQueue;
  readonly limits: ServerLimits;
  readonly onStored: () => void;
  /** And the others have been told. */
  readonly onTold: () => void;
  /** Something it builds on has not arrived. */
  readonly onEarly: () => void;
  readonly onRefused: (code: RefusalCode, frame: number) => void;
  readonly close: (reason: CloseName) => void;
}

/** A client that cannot mend its gap in so many answers never will. */
const MOST_FRESH_STARTS = 8;

interface Numbered {
  readonly frame: number;
  readonly kind: 'step 2' | 'update';
  readonly update: Uint8Array;
}

export function openIntake(ports: IntakePorts): Intake {
  const { limits, queue, rights, self } = ports;
  const durable = openDurableCount();
  let numbered = 0;
  let waiting = 0;
  let bytesHeld = 0;
  let held: Numbered[] | undefined = [];
  let freshStarts = 0;

  const early = (frame: number) => {
    durable.early(frame);
    freshStarts += 1;
    if (freshStarts > MOST_FRESH_STARTS) ports.close('edit-refused');
    else ports.onEarly();
  };
  const stored = ({ frame, kind }: Numbered) => {
    if (kind === 'update') durable.stored(frame);
    else {
      durable.caughtUp(frame);
      freshStarts = 0;
    }
    ports.onStored();
  };
  const settle = (item: Numbered, outcome: Outcome) => {
    waiting -= 1;
    if (outcome.kind === 'refused') ports.onRefused(outcome.code, item.frame);
    else if (outcome.kind === 'failed') ports.close('not-saved');
    else if (outcome.kind === 'early') early(item.frame);
    else stored(item);
  };
  const offer = (item: Numbered) => {
    waiting += 1;
    if (waiting > limits.updatesWaiting) return ports.close('busy');
    queue.offer({
      from: self,
      update: item.update,
      rights,
      settle: (outcome) => settle(item, outcome),
      told: ports.onTold,
    });
  };
  const hold = (item: Numbered, waitingForStep2: Numbered[]) => {
    waitingForStep2.push(item);
    bytesHeld += item.update.length;
    const isTooMuch = waitingForStep2.length > limits.updatesWaiting || bytesHeld > limits.stateBytes;
    if (isTooMuch) ports.close('too-many-messages');
  };

  return {
    take(kind, update) {
      numbered += 1;
      const item: Numbered = { frame: numbered, kind, update };
      if (kind === 'update' && held) return hold(item, held);
      const after = held ?? [];
      held = undefined;
      for (const next of [item, ...after]) offer(next);
    },
    isWaiting: () => waiting > 0 || (held !== undefined && held.length > 0),
    next: () => numbered + 1,
    count: durable.count,
    stop() {
      held = undefined;
    },
  };
}
