import type { Stop } from '@loopwright/document';

/** The parts of a window that pictures are timed by. */
export interface Clock {
  requestAnimationFrame(work: () => void): number;
  cancelAnimationFrame(handle: number): void;
}

/** Does work at most once for each picture the browser shows. */
export interface PictureClock {
  /**
   * As early as it can: the first piece of work after a picture runs as soon as the event that asked for it is over.
   * Browsers deliver the pointer just before they draw, so what follows from a move is in the same picture. Further
   * work waits for that picture.
   */
  readonly soon: (work: () => void) => Stop;
  /**
   * When a picture is drawn that nothing was worked out for yet: what comes in between two pictures, however often, is
   * worked out once.
   */
  readonly later: (work: () => void) => Stop;
}

export function openPictureClock(clock: Clock): PictureClock {
  /** Whether the next picture has its work already. */
  let done = false;
  const inFrame = (work: () => void) => {
    const handle = clock.requestAnimationFrame(work);
    return () => clock.cancelAnimationFrame(handle);
  };
  const soon = (work: () => void) => {
    if (done) return inFrame(work);
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
  const later = (work: () => void) => {
    if (!done) return inFrame(work);
    let cancel = inFrame(() => {
      cancel = inFrame(work);
    });
    return () => cancel();
  };
  return { soon, later };
}
