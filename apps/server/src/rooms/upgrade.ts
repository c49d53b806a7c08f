import type { IncomingMessage, Server } from 'node:http';
import type { Duplex } from 'node:stream';
import { CLOSE_CODES, type CloseName, type CloseReason, LIMITS, parseRoomPath } from '@loopwright/protocol';
import { type RawData, type ServerOptions, type WebSocket, WebSocketServer } from 'ws';
import type { NoEntry } from '../access/access.ts';
import { cookieName } from '../access/cookies.ts';
import { isOwnOrigin } from '../access/origin.ts';
import { reasonOf } from '../log.ts';
import type { Metrics } from '../metrics.ts';
import type { ServerPorts } from '../ports.ts';
import type { Rooms } from './rooms.ts';
import type { Socket } from './socket.ts';

const CLOSE_FOR: Readonly<Record<NoEntry, CloseName>> = {
  'no-such-board': 'board-gone',
  'wrong-link': 'link-not-known',
  'link-revoked': 'link-revoked',
  'link-ended': 'link-revoked',
};

/** Bytes of a close frame's reason that RFC 6455 has room for; the page has the words, this is for a reader of the wire. */
const REASON_BYTES = 120;

export interface UpgradePorts extends ServerPorts {
  readonly rooms: Rooms;
  readonly metrics: Metrics;
  readonly parseCookies: (header: string) => Readonly<Record<string, string | undefined>>;
}

/** Milliseconds in which the other side has to answer a close, before its socket is ended without it. */
const CLOSE_TIMEOUT = 5000;

/**
 * The longest message that is read at all. A page whose frame is longer than the protocol allows, but holds no more than
 * a whole board may, is told so in words; past this the library ends the connection.
 */
const LONGEST_MESSAGE = LIMITS.mostStateBytes + LIMITS.mostFrameBytes;

/** Ends a connection that is no WebSocket of ours. It may be reset meanwhile, and nobody else listens for that. */
function turnAway(stream: Duplex): void {
  stream.on('error', () => stream.destroy());
  stream.once('finish', () => stream.destroy());
  stream.end('HTTP/1.1 403 Forbidden\r\nconnection: close\r\ncontent-length: 0\r\n\r\n');
}

/** `closeTimeout` is newer than the library's types. */
const OPTIONS: ServerOptions & { readonly closeTimeout: number } = {
  noServer: true,
  maxPayload: LONGEST_MESSAGE,
  perMessageDeflate: false,
  clientTracking: false,
  closeTimeout: CLOSE_TIMEOUT,
};

/** Takes WebSockets on `/sync/BOARD/MEMBERSHIP/plan`. The answer stops taking them. */
export function takeSockets(http: Server, ports: UpgradePorts): () => void {
  const sockets = new WebSocketServer(OPTIONS);
  const onUpgrade = (request: IncomingMessage, stream: Duplex, head: Buffer) => {
    const path = (request.url ?? '').split('?', 1)[0] ?? '';
    if (!path.startsWith('/sync/') || !isOwnOrigin(request.headers, ports.publicUrl)) return turnAway(stream);
    // A refusal in words needs an open socket: a browser shows no page the status of a failed upgrade.
    sockets.handleUpgrade(request, stream, head, (socket) => {
      socket.pause();
      socket.on('error', () => socket.terminate());
      letIn(socket, path, request.headers.cookie ?? '', ports).catch((failure: unknown) => {
        ports.log.error('room-not-opened', { reason: reasonOf(failure) });
        closeSocket(socket, CLOSE_CODES['not-saved']);
      });
    });
  };
  http.on('upgrade', onUpgrade);
  return () => {
    http.off('upgrade', onUpgrade);
    sockets.close();
  };
}

async function letIn(socket: WebSocket, path: string, cookies: string, ports: UpgradePorts): Promise<void> {
  const { access, metrics, rooms } = ports;
  const name = parseRoomPath(path);
  const token = name && ports.parseCookies(cookies)[cookieName(name.board, name.membership)];
  if (!name || !token) return closeSocket(socket, CLOSE_CODES['link-not-known']);
  const result = await access.admit(name.board, { membership: name.membership, token });
  if (result.kind === 'refused') return closeSocket(socket, CLOSE_CODES[CLOSE_FOR[result.why]]);
  const room = await rooms.open({ board: name.board, room: name.room });
  if (socket.readyState !== socket.OPEN) return;
  // Opening a room takes a while, in which a link may be withdrawn or the server told to stop.
  const tooLate = rooms.closedMeanwhile(result.link.id);
  if (tooLate) return closeSocket(socket, CLOSE_CODES[tooLate]);
  const member = room.join(socketOf(socket), result);
  if (!member) return;
  metrics.connections.inc();
  socket.on('message', (data: RawData) => member.receive(bytesOf(data)));
  socket.on('pong', member.heard);
  socket.on('close', () => {
    metrics.connections.dec();
    member.gone();
  });
  socket.resume();
}

function socketOf(socket: WebSocket): Socket {
  return {
    send: (bytes) => socket.send(bytes),
    buffered: () => socket.bufferedAmount,
    ping: () => socket.ping(),
    close: (reason) => closeSocket(socket, reason),
    drop: () => socket.terminate(),
  };
}

function closeSocket(socket: WebSocket, { code, words }: CloseReason): void {
  socket.resume(); // a paused socket never hears the other side's answer to the close
  socket.close(code, words.slice(0, REASON_BYTES));
}

function bytesOf(data: RawData): Uint8Array {
  if (data instanceof ArrayBuffer) return new Uint8Array(data);
  return Array.isArray(data) ? Buffer.concat(data) : data;
}
