/** Counts what was done here against what the server has committed (PROTOCOL.md, S1–S6). */
export interface Tally {
  /** Something was changed on this page. */
  edited(): void;
  /** A new connection: its frames are numbered from 1 again. */
  opened(): void;
  /** A step 2 or update frame went out. */
  sent(): void;
  /** The first `count` frames of this connection are in the store. */
  committed(count: number): void;
  /** Changes made on this page that are not known to be in the store. */
  waiting(): number;
  /** Whether everything this machine holds is in the store, also what it held before this page was opened. */
  isSettled(): boolean;
}

export function openTally(): Tally {
  let edits = 0;
  let saved = 0;
  let durable = 0;
  /** For each frame of the connection, how many changes were made when it went out. */
  let frames: number[] = [];
  return {
    edited() {
      edits += 1;
    },
    opened() {
      frames = [];
      durable = 0;
    },
    sent() {
      frames.push(edits);
    },
    committed(count) {
      durable = Math.max(durable, Math.min(count, frames.length));
      saved = Math.max(saved, frames[durable - 1] ?? 0);
    },
    waiting: () => edits - saved,
    // A change made while the socket was closing went out in no frame.
    isSettled: () => frames.length > 0 && durable === frames.length && saved === edits,
  };
}
