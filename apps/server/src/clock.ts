export type Stop = () => void;

/** Time as the server knows it; tests move it by hand. */
export interface Clock {
  /** Milliseconds since 1970. */
  now(): number;
  /** Once, after so many milliseconds; the answer calls it off. */
  after(milliseconds: number, then: () => void): Stop;
  /** Again and again, until called off. */
  every(milliseconds: number, then: () => void): Stop;
}

/** The machine's clock. Its timers never keep the process alive by themselves. */
export const systemClock: Clock = {
  now: () => Date.now(),
  after(milliseconds, then) {
    const timer = setTimeout(then, milliseconds);
    timer.unref();
    return () => clearTimeout(timer);
  },
  every(milliseconds, then) {
    const timer = setInterval(then, milliseconds);
    timer.unref();
    return () => clearInterval(timer);
  },
};
