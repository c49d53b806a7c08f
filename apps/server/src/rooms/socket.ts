import type { CloseReason } from '@loopwright/protocol';

/** The server's end of one connection. */
export interface Socket {
  send(bytes: Uint8Array): void;
  /** Bytes that the other side has not taken yet. */
  buffered(): number;
  /** Asks for a sign of life; `heard` of its connection is told. */
  ping(): void;
  close(reason: CloseReason): void;
  /** Ends it without waiting for the other side. */
  drop(): void;
}
