import type { Stop } from '../contract.ts';

/** Listeners of one kind. */
export function openListeners<Args extends readonly unknown[]>() {
  const listeners = new Set<(...args: Args) => void>();
  return {
    add(listener: (...args: Args) => void): Stop {
      const own = (...args: Args) => listener(...args);
      listeners.add(own);
      return () => {
        listeners.delete(own);
      };
    },
    tell(...args: Args): void {
      for (const listener of [...listeners]) listener(...args);
    },
  };
}
