import { encodeFrame, encodePresence } from '@loopwright/protocol';
import type { Admitted } from '../access/access.ts';
import { SERVER_LIMITS, type ServerLimits } from '../limits.ts';
import { makeMetrics } from '../metrics.ts';
import { type Member, openLiveRoom, type Room } from '../rooms/room.ts';
import type { Role, Store } from '../storage/store.ts';
import { handClock } from './hand-clock.ts';
import { listDocument } from './list-document.ts';
import { paperLog } from './paper-log.ts';
import { type PaperSocket, paperSocket } from './paper-socket.ts';

/** What a room asks of the store, and a switch that makes the disk full. */
function paperStore(raised: string[]) {
  const appended: number[][] = [];
  let full = false;
  const refuse = () => Promise.reject(new Error('never asked in this test'));
  const store: Store = {
    addBoard: refuse,
    board: refuse,
    addLink: refuse,
    link: refuse,
    linkOf: refuse,
    revokeLink: refuse,
    addMembership: refuse,
    membership: refuse,
    countMemberships: refuse,
    addBlob: refuse,
    hasBlob: refuse,
    roomLog: refuse,
    compact: refuse,
    check: refuse,
    close: refuse,
    async raiseEpoch(membership) {
      raised.push(membership);
      return raised.length + 1;
    },
    async append(_key, updates) {
      if (full) throw new Error('disk full');
      appended.push(updates.map(([value = 0]) => value));
    },
  };
  return { store, appended, fill: (now: 'full' | 'free') => (full = now === 'full') };
}

export interface TestGuest {
  readonly socket: PaperSocket;
  readonly member: Member;
  step1(vector?: readonly number[]): void;
  step2(...bytes: number[]): void;
  update(...bytes: number[]): void;
  present(client: number, state: unknown, clock?: number): void;
}

/** A live room over a list document, paper sockets and a clock moved by hand. */
export function openTestRoom(limits: Partial<ServerLimits> = {}) {
  const raised: string[] = [];
  const { store, appended, fill } = paperStore(raised);
  const clock = handClock();
  const log = paperLog();
  const document = listDocument();
  let emptied = 0;
  const room: Room = openLiveRoom({ board: 'b1', room: 'plan' }, document, {
    store,
    clock,
    log,
    limits: { ...SERVER_LIMITS, ...limits },
    metrics: makeMetrics(),
    onEmpty: () => {
      emptied += 1;
    },
  });
  const join = (name: string, role: Role = 'designer', endsAt?: number): TestGuest => {
    const socket = paperSocket();
    const member = room.join(socket, somebody(name, role, endsAt));
    if (!member) throw new Error('the room was full');
    const say = (bytes: Uint8Array) => member.receive(bytes);
    return {
      socket,
      member,
      step1: (vector = [0]) => say(encodeFrame({ kind: 'step 1', vector: new Uint8Array(vector) })),
      step2: (...bytes) => say(encodeFrame({ kind: 'step 2', update: new Uint8Array(bytes) })),
      update: (...bytes) => say(encodeFrame({ kind: 'update', update: new Uint8Array(bytes) })),
      present: (client, state, at = 1) =>
        say(encodeFrame({ kind: 'presence', presence: encodePresence([{ client, clock: at, state }]) })),
    };
  };
  return { room, join, document, appended, fill, raised, clock, log, emptied: () => emptied };
}

export function somebody(name: string, role: Role, endsAt?: number): Admitted {
  const link = { id: `l-${role}`, board: 'b1', secretHash: 'aa', role, revoked: false };
  return {
    membership: { id: `m-${name}`, board: 'b1', link: link.id, tokenHash: 'bb', name, ink: 2, epoch: 1 },
    role,
    link: endsAt === undefined ? link : { ...link, endsAt },
  };
}
