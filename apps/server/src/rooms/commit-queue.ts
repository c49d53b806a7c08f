import type { RoomDocument } from '@loopwright/document/server';
import type { RefusalCode } from '@loopwright/protocol';
import type { Clock } from '../clock.ts';
import { type Log, reasonOf } from '../log.ts';
import type { Metrics } from '../metrics.ts';
import type { Committed } from './fan-out.ts';

/** What came of an offered update. `failed`: the store would not take it; nothing of it is kept. */
export type Outcome =
  | { readonly kind: 'committed' | 'known' | 'early' | 'failed' }
  | { readonly kind: 'refused'; readonly code: RefusalCode };

/** An update on its way into the room. */
export interface Offered {
  /** Whose it is: the updates of one source are settled one after the other, in order. */
  readonly from: object;
  readonly update: Uint8Array;
  readonly rights: 'read' | 'write';
  readonly settle: (outcome: Outcome) => void;
  /** Once there is nothing of it that the others have still to be told. */
  readonly told: () => void;
}

/** Updates pass one gate: offered, committed, applied, settled, broadcast, and only then `told`. */
export interface CommitQueue {
  offer(offered: Offered): void;
  /** Takes nothing of a source any more, not even what it has waiting; what is being committed goes on. */
  forget(from: object): void;
  /** Whether the last commit failed and none has succeeded since. */
  refusing(): boolean;
  /** Kept when nothing is waiting or being committed. */
  idle(): Promise<void>;
}

export interface CommitQueuePorts {
  readonly document: RoomDocument;
  /** All or none, durable when its promise is kept. */
  readonly append: (updates: readonly Uint8Array[]) => Promise<void>;
  readonly broadcast: (committed: readonly Committed[]) => void;
  readonly clock: Clock;
  readonly log: Log;
  readonly metrics: Metrics;
}

/**
 * The gate of one room.
 *
 * The document in memory is what the store holds, at every moment: an update is applied after its commit. While one
 * commit is under way others gather, and go into the next one together.
 */
export function openCommitQueue(ports: CommitQueuePorts): CommitQueue {
  let waiting: Offered[] = [];
  let running: Promise<void> | undefined;
  let refusing = false;
  const forgotten = new WeakSet<object>();

  /** Those that can be committed together, at most one of each source: a second may build on the first. */
  const takeBatch = (): Offered[] => {
    const batch: Offered[] = [];
    const taken = new Set<object>();
    const later: Offered[] = [];
    const offered = waiting;
    waiting = [];
    for (const item of offered) {
      if (forgotten.has(item.from)) continue;
      if (taken.has(item.from)) later.push(item);
      else if (isNew(ports, item)) {
        taken.add(item.from);
        batch.push(item);
      }
    }
    waiting = [...later, ...waiting];
    return batch;
  };

  const run = async () => {
    await Promise.resolve(); // whatever arrived in the same turn goes into one commit
    while (waiting.length > 0) {
      const batch = takeBatch();
      if (batch.length > 0) refusing = !(await commit(ports, batch));
    }
    running = undefined;
  };

  return {
    offer(offered) {
      waiting.push(offered);
      running ??= run();
    },
    forget(from) {
      forgotten.add(from);
    },
    refusing: () => refusing,
    idle: () => running ?? Promise.resolve(),
  };
}

/** Settles at once what needs no commit. */
function isNew({ document, metrics }: CommitQueuePorts, { update, rights, settle, told }: Offered): boolean {
  const offer = document.offer(update, rights);
  metrics.updates.inc({ outcome: offer.kind });
  if (offer.kind === 'new') return true;
  settle(offer.kind === 'refused' ? offer : { kind: offer.kind });
  told();
  return false;
}

async function commit(ports: CommitQueuePorts, batch: readonly Offered[]): Promise<boolean> {
  const { append, broadcast, clock, document, log, metrics } = ports;
  const began = clock.now();
  try {
    await append(batch.map(({ update }) => update));
  } catch (failure) {
    document.forgo();
    log.error('commit-failed', { updates: batch.length, reason: reasonOf(failure) });
    for (const { settle } of batch) settle({ kind: 'failed' });
    return false;
  }
  metrics.commits.inc();
  metrics.commitSeconds.observe((clock.now() - began) / 1000);
  for (const { update, settle } of batch) {
    document.apply(update);
    settle({ kind: 'committed' });
  }
  broadcast(batch);
  for (const { told } of batch) told();
  return true;
}
