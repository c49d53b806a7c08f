import './ring.css';
import { openSlot, type Watched } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import type { Bench } from '../instrument.ts';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { WipeButtons } from '../sketches/WipeButtons.tsx';
import { FIRST_RADIUS, startRing } from './start-ring.ts';

/** Rings of a chosen radius about greens, tees, turns and places. */
export function openClearanceRing(): InstrumentEntry {
  const bench = openSlot<Bench | undefined>(undefined);
  const radius = openSlot(FIRST_RADIUS);
  const options = () => <RingOptions bench={bench} />;
  return {
    instrument: {
      name: 'clearance ring',
      title: 'Clearance ring',
      does: 'A ring of so many metres about a green, a tee, a turn or a place; it goes along.',
      start: (given) => {
        bench.set(given);
        return startRing(given, radius);
      },
    },
    Options: options,
  };
}

interface RingOptionsProps {
  readonly bench: Watched<Bench | undefined>;
}

function RingOptions({ bench }: RingOptionsProps) {
  const held = useWatched(bench);
  if (!held) return null;
  return (
    <>
      <WipeButtons bench={held} />
      <p className="small soft ring__caution">A ring shows a distance. It does not say that a place is safe.</p>
    </>
  );
}
