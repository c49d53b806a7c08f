import { isFields } from '@loopwright/model';
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
  /** As it came in. */
  readonly word: unknown;
  readonly at: number;
  /** Read when somebody asks who is here: of many words between two pictures the newest alone costs a reading. */
  readonly person: Person | 'nobody' | 'unread';
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
  let isStale = false;
  let expiry: Stop | undefined;

  const isOver = ({ at }: Heard) => clock.now() - at >= LIMITS.dragForgottenAfter;
  const change = () => {
    isStale = true;
    onChange();
  };
  const watchExpiry = () => {
    const running = [...heard.values()].filter((one) => hasDrag(one) && !isOver(one));
    if (expiry !== undefined || running.length === 0) return;
    const first = Math.min(...running.map(({ at }) => at));
    expiry = clock.after(first + LIMITS.dragForgottenAfter - clock.now(), lookForExpired);
  };
  const lookForExpired = () => {
    expiry = undefined;
    if ([...heard.values()].some((one) => hasDrag(one) && isOver(one))) change();
    watchExpiry();
  };
  const read = () => {
    isStale = false;
    const before = new Map(shown.map((person) => [person.client, person]));
    const next: Person[] = [];
    for (const [client, one] of heard) {
      const person = one.person === 'unread' ? (parsePerson(client, one.word) ?? 'nobody') : one.person;
      heard.set(client, { ...one, person });
      if (person === 'nobody') continue;
      next.push(keepSame(before.get(client), person.drag && isOver(one) ? withoutDrag(person) : person));
    }
    next.sort((a, b) => a.client - b.client);
    const isSame = next.length === shown.length && next.every((person, index) => person === shown[index]);
    if (!isSame) shown = next;
  };
  return {
    hear(client, word) {
      const was = heard.get(client);
      const isRepeat = was !== undefined && isSameValue(was.word, word);
      const isForgotten = was !== undefined && isOver(was);
      heard.set(client, { word, at: clock.now(), person: isRepeat ? was.person : 'unread' });
      if (expiry === undefined) watchExpiry();
      if (!isRepeat || isForgotten) change();
    },
    left(client) {
      if (heard.delete(client)) change();
    },
    others() {
      if (isStale) read();
      return shown;
    },
    close() {
      expiry?.();
    },
  };
}

/** Whether a word speaks of a drag at all, readable or not. */
function hasDrag({ word }: Heard): boolean {
  return isFields(word) && word.drag !== undefined;
}
