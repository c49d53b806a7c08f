/** Remembers what was worked out last, and for what. */
export interface Memory<Value> {
  /** The value worked out under this key for these very inputs, if it is one of the last two; else made anew. */
  recall(key: string, inputs: readonly unknown[], make: () => Value): Value;
  /** Drops what the last few runs did not ask for, so that what left the plan leaves the memory. */
  forgetUnused(): void;
}

interface Entry<Value> {
  readonly inputs: readonly unknown[];
  readonly value: Value;
}

/** Two a key: while a hole is dragged, the plan without the drag and the plan with it are asked for by turns. */
interface Kept<Value> {
  newest: Entry<Value>;
  older: Entry<Value> | undefined;
  used: number;
}

/** Runs that something may go unasked for. */
const RUNS_KEPT = 4;

/** An empty memory. Inputs are compared by identity; its owner keeps it in a closure, never in a module. */
export function openMemory<Value>(): Memory<Value> {
  const kept = new Map<string, Kept<Value>>();
  let run = 0;
  return {
    recall(key, inputs, make) {
      const known = kept.get(key);
      if (!known) {
        const newest = { inputs, value: make() };
        kept.set(key, { newest, older: undefined, used: run });
        return newest.value;
      }
      known.used = run;
      if (isSameList(known.newest.inputs, inputs)) return known.newest.value;
      const again = known.older && isSameList(known.older.inputs, inputs) ? known.older : { inputs, value: make() };
      known.older = known.newest;
      known.newest = again;
      return again.value;
    },
    forgetUnused() {
      for (const [key, { used }] of kept) if (used + RUNS_KEPT < run) kept.delete(key);
      run += 1;
    },
  };
}

/** Whether two lists hold the same things in the same order, by identity. */
export function isSameList(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a === b) return true;
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (!Object.is(a[i], b[i])) return false;
  return true;
}
