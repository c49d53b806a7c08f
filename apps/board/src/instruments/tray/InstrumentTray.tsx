import { memo, useState } from 'react';
import { Button, Toolbar } from 'react-aria-components';
import type { CanvasSize } from '../../drawing/site-transform.ts';
import { readKept, writeKept } from '../../live/kept.ts';
import type { Watched } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import type { Held, InstrumentHand } from '../instrument-hand.ts';
import { InstrumentButton } from './InstrumentButton.tsx';
import { Strip } from './Strip.tsx';
import './tray.css';

interface InstrumentTrayProps {
  readonly hand: InstrumentHand;
  /** Of the drawing. */
  readonly size: Watched<CanvasSize>;
  /** No hole is drawn yet: whoever begins is told what the instruments are called. */
  readonly isBare: boolean;
}

/** Pixels of drawing from which the strip has room for all of it, and from which the instruments do not fold. */
const ROOMY_FROM = 780;
const OPEN_FROM = 400;

/**
 * The instruments over the upper left edge of the drawing, and the strip of the one in the hand. Not drawn anew while
 * somebody drags.
 */
export const InstrumentTray = memo(function InstrumentTray({ hand, size, isBare }: InstrumentTrayProps) {
  const held = useWatched(hand.held);
  const isRoomy = useWatched(size).width >= ROOMY_FROM;
  return (
    <div className="table-top">
      <Tray hand={hand} size={size} held={held} isBare={isBare && isRoomy} />
      {held && <Strip key={held.entry.instrument.name} hand={hand} held={held} isRoomy={isRoomy} />}
    </div>
  );
});

interface TrayProps extends InstrumentTrayProps {
  readonly held: Held | undefined;
}

function Tray({ hand, size, held, isBare }: TrayProps) {
  const [isUnfolded, setUnfolded] = useState(false);
  const [areNamed, setNamed] = useState(() => readKept('instrument names'));
  const isSmall = useWatched(size).width < OPEN_FROM;
  const isFolded = isSmall && !isUnfolded;
  const words = isUnfolded || (areNamed === undefined ? isBare : areNamed === 'shown');
  const nameOrNot = () => {
    const next = words ? 'hidden' : 'shown';
    writeKept('instrument names', next);
    setNamed(next);
  };
  const take = (does: () => void) => () => {
    does();
    hand.drawing()?.focus();
    setUnfolded(false);
  };
  const inHand = held?.entry.instrument;
  return (
    <Toolbar className="instrument-tray" orientation="vertical" aria-label="Instruments">
      <InstrumentButton instrument={HAND} isHeld={!held} words={words} onTake={take(hand.putAway)} />
      {hand.entries
        .filter(({ instrument }) => !isFolded || instrument === inHand)
        .map(({ instrument }) => (
          <InstrumentButton
            key={instrument.name}
            instrument={instrument}
            isHeld={instrument === inHand}
            words={words}
            onTake={take(() => hand.take(instrument.name))}
          />
        ))}
      {isSmall ? (
        <Button
          className="instrument-tray__button"
          aria-label={isFolded ? 'Show the instruments' : 'Fold the instruments'}
          aria-expanded={!isFolded}
          onPress={() => setUnfolded(isFolded)}
        >
          ⋯
        </Button>
      ) : (
        <Button
          className="instrument-tray__button instrument-tray__names"
          aria-label={words ? 'Hide the names' : 'Show the names'}
          onPress={nameOrNot}
        >
          {words ? '‹' : '›'}
        </Button>
      )}
    </Toolbar>
  );
}

const HAND = { name: 'hand', title: 'Hand', does: 'Moves holes and their parts, and the paper.' } as const;
