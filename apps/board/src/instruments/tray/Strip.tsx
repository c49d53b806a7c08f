import { useState } from 'react';
import { Button, ToggleButton } from 'react-aria-components';
import { openSlot } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import type { Held, InstrumentHand } from '../instrument-hand.ts';
import { EntryField } from './EntryField.tsx';

interface StripProps {
  readonly hand: InstrumentHand;
  readonly held: Held;
  /** Whether there is room for what may be chosen; else it is a press away. */
  readonly isRoomy: boolean;
}

const NO_ENTRY = openSlot<string | undefined>(undefined);

/** What the instrument in the hand asks for: what to do next, what may be chosen and typed, one step back, and that it is all. */
export function Strip({ hand, held, isRoomy }: StripProps) {
  const { running, entry } = held;
  const { Options } = entry;
  const prompt = useWatched(running.prompt);
  const heard = useWatched(hand.heard);
  const asked = useWatched(running.entry ?? NO_ENTRY);
  const isSnapping = useWatched(hand.snapping);
  const isByKeys = useWatched(hand.cross) !== undefined;
  const [isOpen, setOpen] = useState(false);
  return (
    <section className="strip" aria-label={entry.instrument.title}>
      <Button className="button button--small button--quiet strip__away" aria-label="Put away" onPress={hand.putAway}>
        ✕
      </Button>
      <p className="strip__prompt" aria-live="polite">
        {prompt}
        {isByKeys && <span className="strip__keys"> Space presses at the cross; Enter makes it the last.</span>}
      </p>
      <div className="strip__row">
        {asked !== undefined && <EntryField hand={hand} running={running} asked={asked} />}
        {running.back && (
          <Button className="button button--small" onPress={() => hand.back()}>
            Back
          </Button>
        )}
        {running.finish && (
          <Button className="button button--small" onPress={() => running.finish?.()}>
            {entry.instrument.ends ?? 'Done'}
          </Button>
        )}
        <ToggleButton className="button button--small" isSelected={isSnapping} onChange={hand.setSnapping}>
          Snap
        </ToggleButton>
        {Options && !isRoomy && (
          <ToggleButton className="button button--small" isSelected={isOpen} onChange={setOpen}>
            Options
          </ToggleButton>
        )}
      </div>
      {Options && (isRoomy || isOpen) && (
        <div className="strip__row">
          <Options />
        </div>
      )}
      <p className="only-heard" aria-live="polite" data-testid="cross-heard">
        {heard}
      </p>
    </section>
  );
}
