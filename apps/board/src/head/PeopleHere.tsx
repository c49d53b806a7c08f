import { memo, useMemo } from 'react';
import { Button, DialogTrigger, Popover } from 'react-aria-components';
import type { HeadProps } from '../board/parts.ts';
import { type PersonView, toPeople } from './people-view.ts';

/** Who is here: initials in their ink, the names one press away. */
export const PeopleHere = memo(function PeopleHere({ me, people }: Pick<HeadProps, 'me' | 'people'>) {
  const { shown, more, all } = useMemo(() => toPeople(me, people), [me, people]);
  return (
    <DialogTrigger>
      <Button className="people" aria-label={`Who is here: ${all.map(({ name }) => name).join(', ')}`}>
        {shown.map((person) => (
          <Initials key={person.key} person={person} />
        ))}
        {more && <span className="people__more">{more}</span>}
      </Button>
      <Popover className="popover" aria-label="Who is here">
        <div className="popover__inside">
          <ul className="people__list">
            {all.map((person) => (
              <li key={person.key} className="people__row">
                <Initials person={person} /> {person.said}
              </li>
            ))}
          </ul>
        </div>
      </Popover>
    </DialogTrigger>
  );
});

function Initials({ person }: { readonly person: PersonView }) {
  return (
    <span className="people__initials" style={{ '--ink-of-person': person.colour }} aria-hidden="true">
      {person.initials}
    </span>
  );
}
