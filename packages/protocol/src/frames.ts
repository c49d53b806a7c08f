import * as decoding from 'lib0/decoding';
import * as encoding from 'lib0/encoding';
import { LIMITS } from './limits.ts';
import { isRefusalCode, type RefusalCode } from './refusals.ts';

/** One message on the socket. The first five are y-websocket's own; `committed` and `refused` are ours. */
export type Frame =
  /** What the sender already holds: answered by a step 2. */
  | { readonly kind: 'step 1'; readonly vector: Uint8Array }
  | { readonly kind: 'step 2'; readonly update: Uint8Array }
  | { readonly kind: 'update'; readonly update: Uint8Array }
  | { readonly kind: 'presence'; readonly presence: Uint8Array }
  | { readonly kind: 'ask presence' }
  | { readonly kind: 'denied'; readonly reason: string }
  /** The first `count` step 2 and update frames of this connection are in the store. */
  | { readonly kind: 'committed'; readonly count: number }
  /** The frame of that number (from 1) was refused whole; a permanent close follows. */
  | { readonly kind: 'refused'; readonly code: RefusalCode; readonly frame: number };

export interface Malformed {
  readonly kind: 'malformed';
  /** For the log; never shown to other people. */
  readonly why: string;
}

/** Message types on the wire. 0–3 belong to y-websocket. */
export const MESSAGE = { sync: 0, presence: 1, auth: 2, askPresence: 3, committed: 100, refused: 101 } as const;
const SYNC = { step1: 0, step2: 1, update: 2 } as const;
const PERMISSION_DENIED = 0;

/** What a reader of bytes throws on its own account; lib0 throws plain errors of its own. */
const malformed = (why: string): Malformed => ({ kind: 'malformed', why });

/**
 * Untrusted bytes as one frame. Never throws; bytes left over make it malformed.
 *
 * Cost: O(1): payloads are views of the given bytes, not copies.
 *
 * @param mostBytes  of a frame from somebody else; one's own are known for what they are at any length
 */
export function parseFrame(bytes: Uint8Array, mostBytes: number = LIMITS.mostFrameBytes): Frame | Malformed {
  if (bytes.length > mostBytes) return malformed(`longer than ${mostBytes} bytes`);
  const decoder = decoding.createDecoder(bytes);
  try {
    const frame = readFrame(decoder);
    if (frame.kind !== 'malformed' && decoding.hasContent(decoder)) return malformed('bytes left over');
    return frame;
  } catch (error) {
    return malformed(error instanceof Error ? error.message : 'unreadable');
  }
}

function readFrame(decoder: decoding.Decoder): Frame | Malformed {
  const type = decoding.readVarUint(decoder);
  switch (type) {
    case MESSAGE.sync:
      return readSync(decoder);
    case MESSAGE.presence:
      return { kind: 'presence', presence: decoding.readVarUint8Array(decoder) };
    case MESSAGE.auth: {
      const word = decoding.readVarUint(decoder);
      if (word !== PERMISSION_DENIED) return malformed(`auth message ${word}`);
      return { kind: 'denied', reason: decoding.readVarString(decoder) };
    }
    case MESSAGE.askPresence:
      return { kind: 'ask presence' };
    case MESSAGE.committed:
      return { kind: 'committed', count: decoding.readVarUint(decoder) };
    case MESSAGE.refused: {
      const code = decoding.readVarString(decoder);
      const frame = decoding.readVarUint(decoder);
      return isRefusalCode(code) ? { kind: 'refused', code, frame } : malformed('unknown refusal');
    }
    default:
      return malformed(`message type ${type}`);
  }
}

function readSync(decoder: decoding.Decoder): Frame | Malformed {
  const type = decoding.readVarUint(decoder);
  const payload = decoding.readVarUint8Array(decoder);
  if (type === SYNC.step1) return { kind: 'step 1', vector: payload };
  if (type === SYNC.step2) return { kind: 'step 2', update: payload };
  if (type === SYNC.update) return { kind: 'update', update: payload };
  return malformed(`sync message ${type}`);
}

/** A frame as bytes, as y-websocket writes them. */
export function encodeFrame(frame: Frame): Uint8Array {
  const encoder = encoding.createEncoder();
  const write = (...numbers: number[]) => {
    for (const number of numbers) encoding.writeVarUint(encoder, number);
  };
  switch (frame.kind) {
    case 'step 1':
      write(MESSAGE.sync, SYNC.step1);
      encoding.writeVarUint8Array(encoder, frame.vector);
      break;
    case 'step 2':
      write(MESSAGE.sync, SYNC.step2);
      encoding.writeVarUint8Array(encoder, frame.update);
      break;
    case 'update':
      write(MESSAGE.sync, SYNC.update);
      encoding.writeVarUint8Array(encoder, frame.update);
      break;
    case 'presence':
      write(MESSAGE.presence);
      encoding.writeVarUint8Array(encoder, frame.presence);
      break;
    case 'ask presence':
      write(MESSAGE.askPresence);
      break;
    case 'denied':
      write(MESSAGE.auth, PERMISSION_DENIED);
      encoding.writeVarString(encoder, frame.reason);
      break;
    case 'committed':
      write(MESSAGE.committed, frame.count);
      break;
    case 'refused':
      write(MESSAGE.refused);
      encoding.writeVarString(encoder, frame.code);
      write(frame.frame);
      break;
  }
  return encoding.toUint8Array(encoder);
}
