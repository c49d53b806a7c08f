import { Button, DialogTrigger, Popover } from 'react-aria-components';
import { LOCKED_WORDS } from './routing-words.ts';

/** Says that the routing is locked; why nothing moves on a press. */
export function LockedMark() {
  return (
    <DialogTrigger>
      <Button className="button button--small head__locked" aria-label="Locked: why nothing moves">
        <svg viewBox="0 0 12 14" aria-hidden="true" className="head__lock">
          <path d="M1 6h10v7H1zM3.2 6V4a2.8 2.8 0 0 1 5.6 0v2" />
        </svg>
        locked
      </Button>
      <Popover className="popover" aria-label="Locked">
        <p className="popover__inside">{LOCKED_WORDS}</p>
      </Popover>
    </DialogTrigger>
  );
}
