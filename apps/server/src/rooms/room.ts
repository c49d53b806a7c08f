import type { RoomDocument } from '@loopwright/document/server';
import { CLOSE_CODES, type CloseName } from '@loopwright/protocol';
import { type Admitted, closedLink } from '../access/access.ts';
import { rightsOf } from '../access/rights.ts';
import type { Clock } from '../clock.ts';
import type { ServerLimits } from '../limits.ts';
import { type Log, reasonOf } from '../log.ts';
import type { Metrics } from '../metrics.ts';
import type { RoomKey, Store } from '../storage/store.ts';
import { type CommitQueue, openCommitQueue } from './commit-queue.ts';
import { type Connection, openConnection } from './connection.ts';
import { type FanOut, fanOutHere, type MakeFanOut, type Reader } from './fan-out.ts';
import { openOutbox } from './outbox.ts';
import { openPresenceBoard, type PresenceBoard } from './presence-board.ts';
import type { Socket } from './socket.ts';
import { openSpeech } from './speech.ts';

/** A room's end of one socket. */
export interface Member {
  receive(bytes: Uint8Array): void;
  /** A sign of life that is no message. */
  heard(): void;
  /** The socket is closed. */
  gone(): void;
}

/** One shared document with everybody who has it open. */
export interface Room {
  /** Undefined when the room is full: the socket was closed in words. */
  join(socket: Socket, who: Admitted): Member | undefined;
  people(): number;
  refusing(): boolean;
  /** Closes everybody who came in by a link. */
  closeLink(link: string, reason: CloseName): void;
  closeAll(reason: CloseName): void;
  /** Repeats the durable counts, and ends connections that fell silent or whose link has ended. */
  beat(): void;
  /** Kept when nothing is on its way to the store. */
  idle(): Promise<void>;
  end(): void;
}

export interface RoomPorts {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly limits: ServerLimits;
  readonly metrics: Metrics;
  readonly fanOut?: MakeFanOut;
  /** Called when the last one left. */
  readonly onEmpty: () => void;
}

interface Guest extends Reader {
  readonly who: Admitted;
  readonly socket: Socket;
  readonly connection: Connection;
  heardAt: number;
}

/** Heartbeats missed before a silent connection is taken for dead. */
const MOST_MISSED_BEATS = 3;

/** What the people of one room have between them. */
interface Shared {
  readonly document: RoomDocument;
  readonly queue: CommitQueue;
  readonly presence: PresenceBoard;
  readonly fanOut: FanOut;
}

export function openLiveRoom(key: RoomKey, document: RoomDocument, ports: RoomPorts): Room {
  const { clock, limits, log, metrics, store } = ports;
  const guests = new Set<Guest>();
  const fanOut = (ports.fanOut ?? fanOutHere)({ readers: guests, clock, limits });
  const queue = openCommitQueue({
    document,
    append: (updates) => store.append(key, updates),
    broadcast: fanOut.updates,
    clock,
    log,
    metrics,
  });
  const shared: Shared = { document, queue, presence: openPresenceBoard(clock), fanOut };

  return {
    join(socket, who) {
      if (guests.size >= limits.connectionsPerBoard) {
        openOutbox(socket, limits, metrics).close(CLOSE_CODES.busy);
        return undefined;
      }
      const guest = openGuest(key, shared, ports, { socket, who });
      guests.add(guest);
      guest.connection.greet();
      return memberOf(guest, clock, () => {
        guests.delete(guest);
        guest.connection.gone();
        if (guests.size === 0) ports.onEmpty();
      });
    },
    people: () => guests.size,
    refusing: queue.refusing,
    closeLink(link, reason) {
      for (const { who, connection } of guests) if (who.link.id === link) connection.close(reason);
    },
    closeAll(reason) {
      for (const { connection } of guests) connection.close(reason);
    },
    beat() {
      for (const guest of guests) beatGuest(guest, clock.now(), limits);
    },
    idle: queue.idle,
    end() {
      fanOut.close();
      document.close();
    },
  };
}

function openGuest(
  key: RoomKey,
  shared: Shared,
  ports: RoomPorts,
  { socket, who }: { readonly socket: Socket; readonly who: Admitted },
): Guest {
  const { clock, limits, log, metrics, store } = ports;
  const self = {};
  const { id, name, ink } = who.membership;
  const outbox = openOutbox(socket, limits, metrics);
  const { connection, speech } = openConnection({
    self,
    rights: rightsOf(who.role, key.room),
    document: shared.document,
    queue: shared.queue,
    outbox,
    presence: shared.presence,
    speech: (isWaiting) =>
      openSpeech({
        holder: self,
        membership: id,
        stamp: { name, ink },
        board: shared.presence,
        fanOut: shared.fanOut,
        clock,
        limits,
        isWaiting,
      }),
    onRefused(code) {
      log.warn('update-refused', { board: key.board, membership: id, code });
      store
        .raiseEpoch(id)
        .catch((failure: unknown) => log.error('epoch-not-raised', { membership: id, reason: reasonOf(failure) }));
    },
    clock,
    limits,
  });
  return { self, who, socket, outbox, connection, client: speech.client, heardAt: clock.now() };
}

function memberOf(guest: Guest, clock: Clock, leave: () => void): Member {
  return {
    receive(bytes) {
      guest.heardAt = clock.now();
      guest.connection.receive(bytes);
    },
    heard() {
      guest.heardAt = clock.now();
    },
    gone: leave,
  };
}

function beatGuest(guest: Guest, now: number, limits: ServerLimits): void {
  if (now - guest.heardAt > MOST_MISSED_BEATS * limits.heartbeat) guest.socket.drop();
  else if (closedLink(guest.who.link, now)) guest.connection.close('link-revoked');
  else {
    guest.connection.beat();
    guest.socket.ping();
  }
}
