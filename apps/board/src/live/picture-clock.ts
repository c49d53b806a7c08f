import type { Stop } from '@loopwright/document';

/** The parts of a window that pictures are timed by. */
export interface Clock {
  requestAnimationFrame(work: () => void): number;
  cancelAnimationFrame(handle: number): void;
}

/**
 * Does work at most once for each picture the browser shows, as early as it can.
 *
 * The first piece of work after a picture runs as soon as the event that asked for it is over: browsers deliver the
 * pointer just before they draw, so what follows from a move is in the same picture, canvas and figures together.
 * Further work waits for that picture.
 */
export function openPictureClock(clock: Clock): (work: () => void) => Stop {
  let done = false;
  return (work) => {
    if (done) {
      const handle = clock.requestAnimationFrame(work);
      return () => clock.cancelAnimationFrame(handle);
    }
    done = true;
    clock.requestAnimationFrame(() => {
      done = false;
    });
    let wanted = true;
    queueMicrotask(() => {
      if (wanted) work();
    });
    return () => {
      wanted = false;
    };
  };
}
