import type { Person } from '@loopwright/document';
import type { Me } from '../board/parts.ts';
import { initialsOf, inkOf } from '../board/people-inks.ts';

export interface PersonView {
  readonly key: string;
  readonly initials: string;
  readonly name: string;
  readonly colour: string;
  /** What the pointer shows: 'Jo, dragging now'. */
  readonly said: string;
}

/** How many stand side by side before the rest is counted. */
const MOST_SHOWN = 6;

export interface PeopleView {
  readonly shown: readonly PersonView[];
  /** '+3', or empty. */
  readonly more: string;
  readonly all: readonly PersonView[];
}

/** Everybody on the board, this person first; the others in the order they came. */
export function toPeople(me: Me, others: readonly Person[]): PeopleView {
  const mine = {
    key: 'me',
    initials: initialsOf(me.name),
    name: me.name,
    colour: inkOf(me.ink).colour,
    said: `${me.name} (you)`,
  };
  const theirs = [...others]
    .sort((a, b) => a.client - b.client)
    .map((person) => ({
      key: String(person.client),
      initials: initialsOf(person.name),
      name: person.name,
      colour: inkOf(person.ink).colour,
      said: person.drag ? `${person.name}, dragging now` : person.name,
    }));
  const all = [mine, ...theirs];
  const more = all.length > MOST_SHOWN ? `+${all.length - MOST_SHOWN}` : '';
  return { shown: all.slice(0, MOST_SHOWN), more, all };
}
