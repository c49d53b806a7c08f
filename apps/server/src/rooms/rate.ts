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
      left = Math.min(burst, left + ((at - filledAt) / 1000) * perSecond);
      filledAt = at;
      if (left < amount) return false;
      left -= amount;
      return true;
    },
  };
}
