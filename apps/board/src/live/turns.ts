import type { Person } from '@loopwright/document';

/**
 * Drags of others that move on in one picture of theirs. In a crowd those are 30 a second: with ten people dragging each
 * comes through 12 times a second, which the eye still takes for a movement.
 */
const MOST_MOVED = 4;

/** Lets a crowd of drags move on by turns, so that no picture takes much longer than another. */
export interface Turns {
  /** Everybody as they are now, but for those whose drag waits its turn: they stay as they were shown. */
  take(shown: readonly Person[], now: readonly Person[]): readonly Person[];
}

/** Whoever waited longest is first. Whoever comes, goes, picks up or lets go never waits. */
export function openTurns(): Turns {
  let order: readonly number[] = [];
  return {
    take(shown, now) {
      const before = new Map(shown.map((person) => [person.client, person]));
      const moved = now.filter((person) => isFurtherDrag(before.get(person.client), person));
      const place = (client: number) => order.indexOf(client);
      const waiting = moved.map(({ client }) => client).sort((a, b) => place(a) - place(b));
      const late = new Set(waiting.slice(MOST_MOVED));
      const taken = waiting.slice(0, MOST_MOVED);
      order = [...order.filter((client) => before.has(client) && !taken.includes(client)), ...taken];
      return late.size === 0 ? now : now.map((one) => (late.has(one.client) ? (before.get(one.client) ?? one) : one));
    },
  };
}

function isFurtherDrag(was: Person | undefined, is: Person): boolean {
  return was?.drag !== undefined && is.drag !== undefined && was.drag !== is.drag;
}
