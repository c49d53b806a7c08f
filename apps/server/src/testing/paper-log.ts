import type { Log } from '../log.ts';

/** A log that a test can read. */
export function paperLog(): Log & { readonly events: readonly string[] } {
  const events: string[] = [];
  const note = (event: string) => {
    events.push(event);
  };
  return { events, info: note, warn: note, error: note };
}
