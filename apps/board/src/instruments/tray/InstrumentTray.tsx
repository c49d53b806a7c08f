import { memo, useState } from 'react';
import { Toolbar } from 'react-aria-components';
import type { CanvasSize } from '../../drawing/site-transform.ts';
import type { Watched } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import type { InstrumentHand } from '../instrument-hand.ts';
import { InstrumentButton } from './InstrumentButton.tsx';
import { Strip } from './Strip.tsx';
import './tray.css';

interface InstrumentTrayProps {
  readonly hand: InstrumentHand;
  /** Of the drawing. */
  readonly size: Watched<CanvasSize>;
}

/** Pixels of drawing from which buttons have words, the strip has room for all of it, and the buttons need not fold. */
const WORDS_FROM = 640;
const ROOMY_FROM = 780;
const OPEN_FROM = 400;

/** The instruments over the upper left edge of the drawing, and the strip of the one in the hand. Not drawn anew while somebody drags. */
export const InstrumentTray = memo(function InstrumentTray({ hand, size }: InstrumentTrayProps) {
  const held = useWatched(hand.held);
  const { width } = useWatched(size);
  const [isUnfolded, setUnfolded] = useState(false);
  const isFolded = width < OPEN_FROM && !isUnfolded;
  const shown = isFolded ? [] : hand.entries;
  const words = width >= WORDS_FROM;
  return (
    <div className={`table-top${words ? ' table-top--words' : ''}`}>
      <Toolbar className="instrument-tray" orientation="vertical" aria-label="Instruments">
        <InstrumentButton
          instrument={HAND}
          isHeld={held === undefined}
          words={words}
          onTake={() => {
            hand.putAway();
            hand.drawing()?.focus();
            setUnfolded(false);
          }}
        />
        {shown.map(({ instrument }) => (
          <InstrumentButton
            key={instrument.name}
            instrument={instrument}
            isHeld={held?.entry.instrument === instrument}
            words={words}
            onTake={() => {
              hand.take(instrument.name);
              setUnfolded(false);
            }}
          />
        ))}
        {isFolded && (
          <button
            type="button"
            className="instrument-tray__more"
            aria-expanded="false"
            onClick={() => setUnfolded(true)}
          >
            <span aria-hidden="true">⋯</span>
            <span className="only-heard">Show the instruments</span>
          </button>
        )}
      </Toolbar>
      {held && <Strip key={held.entry.instrument.name} hand={hand} held={held} isRoomy={width >= ROOMY_FROM} />}
    </div>
  );
});

const HAND = { name: 'hand', title: 'Hand', does: 'Moves holes and their parts, and the paper.' } as const;
