import { openSlot, type Slot, type Watched } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import { Choices } from '../../style/Choices.tsx';
import type { Bench } from '../instrument.ts';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { WipeButtons } from '../sketches/WipeButtons.tsx';
import { type PencilEnd, startPencil } from './start-pencil.ts';

/** A freehand pencil whose strokes everybody sees as they are drawn, and the eraser at its other end. */
export function openPencil(): InstrumentEntry {
  const bench = openSlot<Bench | undefined>(undefined);
  const end = openSlot<PencilEnd>('point');
  const options = () => <PencilOptions bench={bench} end={end} />;
  return {
    instrument: {
      name: 'pencil',
      title: 'Pencil',
      does: 'Freehand lines that everybody sees; wiped when they have said enough.',
      finger: 'strokes',
      start: (given) => {
        bench.set(given);
        return startPencil(given, end);
      },
    },
    Options: options,
  };
}

const ENDS = [
  { key: 'point', words: 'Draw' },
  { key: 'eraser', words: 'Wipe' },
] as const;

interface PencilOptionsProps {
  readonly bench: Watched<Bench | undefined>;
  readonly end: Slot<PencilEnd>;
}

function PencilOptions({ bench, end }: PencilOptionsProps) {
  return (
    <>
      <Choices label="The pencil's end" choices={ENDS} chosen={useWatched(end)} onChoose={end.set} />
      <WipeButtons bench={useWatched(bench)} />
    </>
  );
}
