import type { Clock } from '../contract.ts';

/** The machine's own time. */
export const SYSTEM_CLOCK: Clock = {
  now: () => Date.now(),
  after(milliseconds, work) {
    const timer = setTimeout(work, milliseconds);
    return () => clearTimeout(timer);
  },
};
