import type { Person } from '@loopwright/document';
import type { RoutingId } from '@loopwright/model';
import { memo } from 'react';
import { initialsOf, inkOf } from '../board/people-inks.ts';
import type { Watched } from '../live/slot.ts';
import { useWatched } from '../live/use-watched.ts';
import { toCanvas, type View } from './site-transform.ts';

interface PeoplePointersProps {
  readonly people: Watched<readonly Person[]>;
  readonly routing: RoutingId;
  readonly view: View;
}

/** Everybody else's pointer with their name, over the drawing; it moves without the drawing being drawn anew. */
export const PeoplePointers = memo(function PeoplePointers({ people, routing, view }: PeoplePointersProps) {
  const here = useWatched(people).filter((person) => person.routing === undefined || person.routing === routing);
  return (
    <ul className="pointers" aria-hidden="true" data-testid="pointers">
      {here.map((person) => {
        if (!person.pointer) return null;
        const { x, y } = toCanvas(view, person.pointer);
        const { colour } = inkOf(person.ink);
        return (
          <li key={person.client} className="pointer" style={{ transform: `translate(${x}px, ${y}px)` }}>
            <svg width="18" height="20" viewBox="0 0 18 20" aria-hidden="true">
              <path d="M1 1 L15 10 L8.5 11.5 L5.5 18 Z" fill={colour} stroke="#FFFDF6" strokeWidth="1.2" />
            </svg>
            <span className="pointer__name" style={{ background: colour }} title={person.name}>
              {person.drag ? person.name : initialsOf(person.name)}
            </span>
          </li>
        );
      })}
    </ul>
  );
});
