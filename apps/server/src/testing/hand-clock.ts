import type { Clock } from '../clock.ts';

interface Alarm {
  at: number;
  readonly every: number | undefined;
  readonly then: () => void;
}

/** A clock that stands still until a test moves it. */
export interface HandClock extends Clock {
  /** Moves on, ringing whatever falls due on the way, in order. */
  pass(milliseconds: number): void;
}

export function handClock(start = 1_800_000_000_000): HandClock {
  let now = start;
  const alarms = new Set<Alarm>();
  const set = (milliseconds: number, every: number | undefined, then: () => void) => {
    const alarm = { at: now + milliseconds, every, then };
    alarms.add(alarm);
    return () => {
      alarms.delete(alarm);
    };
  };
  const nextBefore = (end: number) =>
    [...alarms].filter(({ at }) => at <= end).sort((first, second) => first.at - second.at)[0];
  return {
    now: () => now,
    after: (milliseconds, then) => set(milliseconds, undefined, then),
    every: (milliseconds, then) => set(milliseconds, milliseconds, then),
    pass(milliseconds) {
      const end = now + milliseconds;
      for (let alarm = nextBefore(end); alarm; alarm = nextBefore(end)) {
        now = alarm.at;
        if (alarm.every === undefined) alarms.delete(alarm);
        else alarm.at += alarm.every;
        alarm.then();
      }
      now = end;
    },
  };
}
