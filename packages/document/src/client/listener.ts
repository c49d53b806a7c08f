import { LIMITS } from '@loopwright/protocol';
import type { Clock, Person, Stop } from '../contract.ts';
import { isSameValue } from '../plain-value.ts';
import { parsePerson } from './parse-person.ts';

/** Everybody else on the board, as they last showed themselves. */
export interface Listener {
  /** Somebody's untrusted word. */
  hear(client: number, state: unknown): void;
  left(client: number): void;
  others(): readonly Person[];
  close(): void;
}

interface Heard {
  readonly person: Person;
  readonly at: number;
}

/** A person without the drag whose ticks stopped. */
function withoutDrag(person: Person): Person {
  const { drag: _, ...rest } = person;
  return rest;
}

/** Values that say the same keep their identity, so that nothing is computed again for a repeat. */
function keepSame(before: Person | undefined, after: Person): Person {
  if (before === undefined) return after;
  if (isSameValue(before, after)) return before;
  const drag = after.drag && isSameValue(before.drag, after.drag) ? before.drag : after.drag;
  return drag ? { ...after, drag } : after;
}

export function openListener(clock: Clock, onChange: () => void): Listener {
  const heard = new Map<number, Heard>();
  let shown: readonly Person[] = [];
  let expiry: Stop | undefined;

  const isOver = ({ at }: Heard) => clock.now() - at >= LIMITS.dragForgottenAfter;
  const watchExpiry = () => {
    expiry?.();
    const running = [...heard.values()].filter((one) => one.person.drag && !isOver(one));
    const first = Math.min(...running.map(({ at }) => at));
    expiry = running.length > 0 ? clock.after(first + LIMITS.dragForgottenAfter - clock.now(), showAgain) : undefined;
  };
  const showAgain = () => {
    const before = new Map(shown.map((person) => [person.client, person]));
    const next = [...heard.values()]
      .map((one) => (one.person.drag && isOver(one) ? withoutDrag(one.person) : one.person))
      .map((person) => keepSame(before.get(person.client), person))
      .sort((a, b) => a.client - b.client);
    watchExpiry();
    if (next.length === shown.length && next.every((person, index) => person === shown[index])) return;
    shown = next;
    onChange();
  };
  return {
    hear(client, state) {
      const person = parsePerson(client, state);
      if (person) heard.set(client, { person, at: clock.now() });
      else heard.delete(client);
      showAgain();
    },
    left(client) {
      if (heard.delete(client)) showAgain();
    },
    others: () => shown,
    close() {
      expiry?.();
    },
  };
}
