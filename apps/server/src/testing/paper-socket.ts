import { type CloseReason, type Frame, type Malformed, parseFrame } from '@loopwright/protocol';
import type { Socket } from '../rooms/socket.ts';

/** A socket that keeps what it is given, for a test to read. */
export interface PaperSocket extends Socket {
  frames(): readonly (Frame | Malformed)[];
  /** Those of one kind. */
  kinds(kind: Frame['kind']): readonly (Frame | Malformed)[];
  clear(): void;
  closedWith(): number | undefined;
  isDropped(): boolean;
  pings(): number;
  /** Makes it as slow as this many bytes waiting. */
  lagBy(bytes: number): void;
}

export function paperSocket(): PaperSocket {
  let sent: (Frame | Malformed)[] = [];
  let buffered = 0;
  let reason: CloseReason | undefined;
  let dropped = false;
  let pings = 0;
  return {
    send(bytes) {
      sent.push(parseFrame(bytes));
    },
    buffered: () => buffered,
    ping() {
      pings += 1;
    },
    close(given) {
      reason ??= given;
    },
    drop() {
      dropped = true;
    },
    frames: () => sent,
    kinds: (kind) => sent.filter((frame) => frame.kind === kind),
    clear() {
      sent = [];
    },
    closedWith: () => reason?.code,
    isDropped: () => dropped,
    pings: () => pings,
    lagBy(bytes) {
      buffered = bytes;
    },
  };
}
