import { hasTravelled, type PointerAt } from './tool.ts';

/** Milliseconds a finger rests before it asks for the menu. */
export const LONG_PRESS = 550;

/** Waits for a finger to rest on one place. */
export interface LongPress {
  begin(at: PointerAt, pressed: () => void): void;
  /** A finger that travels drags instead. */
  move(at: PointerAt): void;
  end(): void;
}

/** @param after  does it once, so many milliseconds from now, unless stopped */
export function openLongPress(after: (work: () => void, milliseconds: number) => () => void): LongPress {
  let waiting: { readonly from: PointerAt; readonly stop: () => void } | undefined;
  const end = () => {
    waiting?.stop();
    waiting = undefined;
  };
  return {
    begin: (from, pressed) => {
      end();
      const stop = after(() => {
        waiting = undefined;
        pressed();
      }, LONG_PRESS);
      waiting = { from, stop };
    },
    move: (at) => {
      if (waiting && hasTravelled(waiting.from, at)) end();
    },
    end,
  };
}
