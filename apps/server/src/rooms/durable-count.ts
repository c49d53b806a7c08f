/** How many of one connection's update frames are in the store. Frames are numbered from 1 in the order sent. */
export interface DurableCount {
  count(): number;
  /** The frame is in the store. */
  stored(frame: number): void;
  /** The frame builds on something that has not arrived: the count stops before it. */
  early(frame: number): void;
  /** A step 2 is in the store: it holds everything that was sent before it. */
  caughtUp(frame: number): void;
}

export function openDurableCount(): DurableCount {
  let count = 0;
  let firstEarly: number | undefined;
  return {
    count: () => count,
    stored(frame) {
      if (firstEarly === undefined) count = Math.max(count, frame);
    },
    early(frame) {
      firstEarly ??= frame;
    },
    caughtUp(frame) {
      firstEarly = undefined;
      count = Math.max(count, frame);
    },
  };
}
