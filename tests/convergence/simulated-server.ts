import { createPlanState, openRoom } from '@loopwright/document/server';
import type { ServerEnd, ServerMember } from '@loopwright/testkit';
import { systemClock } from '../../apps/server/src/clock.ts';
import { SERVER_LIMITS } from '../../apps/server/src/limits.ts';
import { makeMetrics } from '../../apps/server/src/metrics.ts';
import { openLiveRoom, type Room } from '../../apps/server/src/rooms/room.ts';
import { planRules } from '../../apps/server/src/rooms/rules.ts';
import type { Store } from '../../apps/server/src/storage/store.ts';
import { somebody } from '../../apps/server/src/testing/open-test-room.ts';
import { paperLog } from '../../apps/server/src/testing/paper-log.ts';
import { boardPlan } from './board-plan.ts';

const KEY = { board: 'board', room: 'plan' } as const;

/** A store in memory that takes its time, fails now and then, and keeps exactly what it has promised. */
function memoryStore(random: () => number, kept: Uint8Array[], isAlive: () => boolean): Store {
  const never = () => Promise.reject(new Error('never asked in this test'));
  return {
    addBoard: never,
    board: never,
    addLink: never,
    link: never,
    linkOf: never,
    revokeLink: never,
    addMembership: never,
    membership: never,
    countMemberships: never,
    addBlob: never,
    hasBlob: never,
    roomLog: never,
    compact: never,
    check: never,
    close: never,
    raiseEpoch: async () => 2,
    append: (_key, updates) =>
      new Promise((resolve, reject) => {
        const fails = random() < 0.02;
        setTimeout(() => {
          if (!isAlive()) return; // killed in the middle: nobody hears of it, nothing is kept
          if (fails) return reject(new Error('disk full'));
          kept.push(...updates);
          resolve();
        }, random() * 60);
      }),
  };
}

/** The server's own room over a store in memory; it can be killed and comes back with what the store has kept. */
export function openSimulatedServer(random: () => number) {
  const kept: Uint8Array[] = [createPlanState(boardPlan())];
  const roomOfStore = () => {
    const document = openRoom(planRules(SERVER_LIMITS));
    for (const update of kept) document.apply(update);
    return document;
  };
  let lives = 0;
  const start = (): Room => {
    lives += 1;
    const life = lives;
    return openLiveRoom(KEY, roomOfStore(), {
      store: memoryStore(random, kept, () => life === lives),
      clock: systemClock,
      log: paperLog(),
      limits: SERVER_LIMITS,
      metrics: makeMetrics(),
      onEmpty: () => undefined,
    });
  };
  let room = start();
  /** A reader of the store that only ever sees what is kept. */
  const follower = roomOfStore();
  let followed = kept.length;
  const beats = setInterval(() => room.beat(), SERVER_LIMITS.heartbeat);

  return {
    accept(membership: string, end: ServerEnd): ServerMember | undefined {
      const role = membership === 'reader' ? 'viewer' : 'designer';
      return room.join(end, somebody(membership, role));
    },
    /** Kills the process and starts it again from what the store has kept. */
    restart() {
      const old = room;
      room = start();
      old.closeAll('server-stopping');
    },
    /** Whether the store holds all of a page's state: a reader's offer of it is nothing new. */
    holds(state: Uint8Array): boolean {
      for (; followed < kept.length; followed++) follower.apply(kept[followed] ?? new Uint8Array([0, 0]));
      return follower.offer(state, 'read').kind === 'known';
    },
    state(): Uint8Array {
      const document = roomOfStore();
      const state = document.state();
      document.close();
      return state;
    },
    close() {
      clearInterval(beats);
      room.end();
      follower.close();
    },
  };
}
