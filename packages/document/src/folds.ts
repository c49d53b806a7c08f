import type { Step } from './undo-step.ts';

/** What is known of a step that put others back. */
interface Fold {
  /** The list of done steps before it. */
  readonly tried: readonly Step[];
  /** Those it put back, the last ones of that list. */
  readonly put: readonly Step[];
  /** The list beneath it after. */
  readonly left: readonly Step[];
}

/** Which steps put others back, and what list of done steps each found and left. */
export interface Folds {
  /** Notes that a step put back the last ones of a list. */
  fold(step: Step, tried: readonly Step[], put: readonly Step[]): void;
  /** The same of a step turned the other way round. */
  carry(from: Step, to: Step): Step;
  /** The list of done steps as it was before the last of it was done. */
  without(done: readonly Step[]): readonly Step[];
  /** The list beneath a step that is done again on top of another. */
  beneath(step: Step, done: readonly Step[]): readonly Step[];
  /** Steps as they were done: of one that put others back first those, then it. What the first put back stands again. */
  asDone(steps: readonly Step[]): readonly Step[];
}

export function openFolds(): Folds {
  const folds = new WeakMap<Step, Fold>();
  const without = (done: readonly Step[]) => {
    const last = done.at(-1);
    return (last && folds.get(last)?.tried) ?? done.slice(0, -1);
  };
  const asDone = ([first, ...more]: readonly Step[]): readonly Step[] => {
    const unfolded = more.flatMap((step) => [...asDone(folds.get(step)?.put ?? []), step]);
    return first ? [first, ...unfolded] : [];
  };
  return {
    fold(step, tried, put) {
      folds.set(step, { tried, put, left: without(tried.slice(0, tried.length - put.length + 1)) });
    },
    carry(from, to) {
      const known = folds.get(from);
      if (known) folds.set(to, known);
      return to;
    },
    without,
    beneath: (step, done) => folds.get(step)?.left ?? done,
    asDone,
  };
}
