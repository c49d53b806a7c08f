import type { ImageLimits } from '@loopwright/formats/image';
import { LIMITS } from '@loopwright/protocol';

const KIB = 1024;
const MIB = 1024 * KIB;
const SECOND = 1000;
const MINUTE = 60 * SECOND;

/** Every limit of the server, each with its unit. What the wire itself allows stands in the protocol. */
export interface ServerLimits {
  /** Bytes of a request to make a board from a plan. */
  readonly planBodyBytes: number;
  /** What one site image may be. */
  readonly image: ImageLimits;
  /** Bytes of any other request. */
  readonly bodyBytes: number;
  /** Milliseconds in which a request has to be here whole. */
  readonly requestTimeout: number;
  /** Milliseconds that a server told to stop waits for requests on their way. */
  readonly closeGrace: number;
  /** Boards, images and entries one address may ask for in a minute. */
  readonly boardsPerMinute: number;
  readonly imagesPerMinute: number;
  readonly entriesPerMinute: number;
  /** Bytes of one update, and of everything a room holds. */
  readonly updateBytes: number;
  readonly stateBytes: number;
  /** Connections on one board, all tabs of all people together. */
  readonly connectionsPerBoard: number;
  /** Frames other than presence one connection may send in a second, on average and in a burst; past it, it is closed. */
  readonly framesPerSecond: number;
  readonly frameBurst: number;
  /** Bytes one connection may send in a second, on average and in a burst; past it, it is closed. */
  readonly bytesPerSecond: number;
  readonly byteBurst: number;
  /** Presence frames one connection may send in a second, on average and in a burst; past it, it is closed. */
  readonly presenceFramesPerSecond: number;
  readonly presenceFrameBurst: number;
  /** Presence messages of one connection that are passed on in a second; the newest of what is over waits. */
  readonly presencePerSecond: number;
  readonly presenceBurst: number;
  /** Bytes waiting for a slow reader: past the first its presence is dropped, past the second it is closed. */
  readonly bufferedBeforeDrop: number;
  readonly bufferedBeforeClose: number;
  /** Updates of one connection that wait for the store, or for its first step 2. */
  readonly updatesWaiting: number;
  /** Milliseconds between two heartbeats; a connection silent for three of them is closed. */
  readonly heartbeat: number;
  /** From this many connections messages are gathered: so many milliseconds lie between two of them. */
  readonly largeRoom: number;
  readonly gather: number;
  /** Milliseconds an empty room stays in memory. */
  readonly roomIdle: number;
  /** Entries of a room's log from which loading it compacts it. */
  readonly compactFrom: number;
}

export const SERVER_LIMITS: ServerLimits = {
  planBodyBytes: 12 * MIB, // a board made from it still has room for edits under `stateBytes`
  image: LIMITS,
  bodyBytes: 16 * KIB,
  requestTimeout: 10 * MINUTE, // the largest image over a slow line, 2 Mbit/s
  closeGrace: 3 * SECOND,
  boardsPerMinute: 30,
  imagesPerMinute: 60,
  entriesPerMinute: 1200, // two full boards behind one address, opening at once; secrets are beyond guessing
  updateBytes: LIMITS.mostUpdateBytes,
  stateBytes: LIMITS.mostStateBytes,
  connectionsPerBoard: 500,
  framesPerSecond: 40,
  frameBurst: 400,
  bytesPerSecond: MIB,
  byteBurst: 16 * MIB,
  presenceFramesPerSecond: 400,
  presenceFrameBurst: 2000,
  presencePerSecond: 60,
  presenceBurst: 120,
  bufferedBeforeDrop: LIMITS.presenceDroppedAboveBytes,
  bufferedBeforeClose: LIMITS.slowReaderClosedAboveBytes,
  updatesWaiting: LIMITS.mostUpdatesWaiting,
  heartbeat: LIMITS.heartbeatEvery,
  largeRoom: 20,
  gather: 20,
  roomIdle: MINUTE / 2,
  compactFrom: 64,
};
