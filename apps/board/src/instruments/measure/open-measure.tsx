import { Button } from 'react-aria-components';
import { openSlot, type Watched } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import type { Bench, Instrument, Running } from '../instrument.ts';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { INSTRUMENT_LETTERS } from '../letters.ts';
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
  const hand = openSlot<Hand | undefined>(undefined);
  const key = INSTRUMENT_LETTERS[name];
  // Made once with the entry, so that it keeps its identity.
  const options = () => (
    <MeasureOptions hand={hand} done={kind === 'measured line' ? 'End the line' : 'Close the area'} />
  );
  return {
    instrument: {
      name,
      ...words,
      ...(key ? { key } : {}),
      start: (bench) => {
        const running = startMeasure(kind, bench);
        hand.set({ bench, running });
        return running;
      },
    },
    Options: options,
  };
}

interface Hand {
  readonly bench: Bench;
  readonly running: Running;
}

function MeasureOptions({ hand, done }: { readonly hand: Watched<Hand | undefined>; readonly done: string }) {
  const held = useWatched(hand);
  return (
    <>
      <Button className="button button--small" onPress={() => held?.running.finish?.()}>
        {done}
      </Button>
      <WipeButtons bench={held?.bench} />
    </>
  );
}
