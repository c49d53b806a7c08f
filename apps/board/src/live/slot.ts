import type { Stop } from '@loopwright/document';

/** A value that is watched: what a view subscribes to, one kind of thing each. */
export interface Watched<Value> {
  get(): Value;
  /** The listener is called after the value became another one. */
  onChange(listener: () => void): Stop;
}

export interface Slot<Value> extends Watched<Value> {
  set(value: Value): void;
}

/** A slot with a first value. Setting the same value again tells nobody. */
export function openSlot<Value>(first: Value): Slot<Value> {
  let value = first;
  const listeners = new Set<() => void>();
  return {
    get: () => value,
    set: (next) => {
      if (Object.is(next, value)) return;
      value = next;
      for (const listener of [...listeners]) listener();
    },
    onChange: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
