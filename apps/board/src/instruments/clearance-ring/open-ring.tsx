import './ring.css';
import { LIMITS } from '@loopwright/model';
import { Input, Label, NumberField } from 'react-aria-components';
import { openSlot, type Slot, type Watched } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import { fromField, toField, unitSymbol } from '../../reading/lengths.ts';
import type { Bench } from '../instrument.ts';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { WipeButtons } from '../sketches/WipeButtons.tsx';
import { FIRST_RADIUS, startRing } from './start-ring.ts';

/** Rings of a chosen radius about greens, tees, turns and places. */
export function openClearanceRing(): InstrumentEntry {
  const bench = openSlot<Bench | undefined>(undefined);
  const radius = openSlot(FIRST_RADIUS);
  const options = () => <RingOptions bench={bench} radius={radius} />;
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
  readonly radius: Slot<number>;
}

function RingOptions({ bench, radius }: RingOptionsProps) {
  const metres = useWatched(radius);
  const held = useWatched(bench);
  if (!held) return null;
  const { units } = held.reading();
  return (
    <>
      <NumberField
        className="strip__field"
        value={toField(metres, units)}
        minValue={toField(1, units)}
        maxValue={toField(LIMITS.ringRadius, units)}
        onChange={(typed) => {
          if (!Number.isNaN(typed)) radius.set(fromField(typed, units));
        }}
      >
        <Label>Radius, {unitSymbol(units)}</Label>
        <Input className="input input--figure ring__radius" />
      </NumberField>
      <WipeButtons bench={held} />
      <p className="small soft ring__caution">A ring shows a distance. It does not say that a place is safe.</p>
    </>
  );
}
