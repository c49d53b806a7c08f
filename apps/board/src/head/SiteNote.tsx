import { Button, DialogTrigger, Popover } from 'react-aria-components';
import { noteHeading } from './note-words.ts';

/** What is to be known about the site, by its first words; all of it on a press or under the pointer. */
export function SiteNote({ note }: { readonly note: string }) {
  return (
    <span title={note} className="head__note">
      <DialogTrigger>
        <Button className="button button--small">{noteHeading(note)}</Button>
        <Popover className="popover" aria-label="About the site">
          <p className="popover__inside">{note}</p>
        </Popover>
      </DialogTrigger>
    </span>
  );
}
