import { openSlot, type Watched } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import type { Bench, Instrument } from '../instrument.ts';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { WipeButtons } from '../sketches/WipeButtons.tsx';
import type { MeasureKind } from './measure-words.ts';
import { startMeasure } from './start-measure.ts';

/** Measures a line leg by leg. It stays for all to see until it is wiped, or is kept. */
export function openMeasureLine(): InstrumentEntry {
  return openMeasure('measured line', 'measure line', {
    title: 'Measure line',
    does: 'Lengths and bearings from point to point; stays until it is wiped.',
  });
}

/** Measures an area by its corners. */
export function openMeasureArea(): InstrumentEntry {
  return openMeasure('measured area', 'measure area', {
    title: 'Measure area',
    does: 'What lies within an outline, and the way around it; stays until it is wiped.',
  });
}

function openMeasure(
  kind: MeasureKind,
  name: 'measure line' | 'measure area',
  words: Pick<Instrument, 'title' | 'does'>,
): InstrumentEntry {
  const bench = openSlot<Bench | undefined>(undefined);
  const options = () => <WipeOptions bench={bench} />;
  return {
    instrument: {
      name,
      ...words,
      ends: kind === 'measured line' ? 'End the line' : 'Close the area',
      start: (given) => {
        bench.set(given);
        return startMeasure(kind, given);
      },
    },
    Options: options,
  };
}

function WipeOptions({ bench }: { readonly bench: Watched<Bench | undefined> }) {
  return <WipeButtons bench={useWatched(bench)} />;
}
