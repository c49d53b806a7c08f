/** Counts what a connection may send: so much a second on average, with a burst saved up. */
export interface Allowance {
  /** Takes so much if it is there, at a time in milliseconds. */
  take(amount: number, now: number): boolean;
}

/** A full allowance of `burst`, filling again by `perSecond`. */
export function openAllowance(perSecond: number, burst: number, now: number): Allowance {
  let left = burst;
  let filledAt = now;
  return {
    take(amount, at) {
      const passed = Math.max(0, at - filledAt); // the machine's time may be set back
      left = Math.min(burst, left + (passed / 1000) * perSecond);
      filledAt = at;
      if (left < amount) return false;
      left -= amount;
      return true;
    },
  };
}
