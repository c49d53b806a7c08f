import { openSlot, type Slot } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import { Choices } from '../../style/Choices.tsx';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { type OutlineRunning, startOutline } from '../outline/start-outline.ts';
import { type BoundaryPart, boundaryRefusal, boundaryWith } from './boundary-edit.ts';

const BEGINS: Readonly<Record<BoundaryPart, string>> = {
  anew: 'Press on the first corner of the boundary.',
  further: 'Press on the first corner of the further piece of land.',
  inner: "Press on the first corner of someone else's land inside.",
};
const ANEW_AGAIN = 'Press on the first corner of the new boundary: it takes the place of the one there is.';

/** Draws the edge of the site, and other people's land inside it. */
export function openBoundary(): InstrumentEntry {
  const part = openSlot<BoundaryPart>('anew');
  const tolerance = openSlot(0);
  const running = openSlot<OutlineRunning | undefined>(undefined);
  const onChoice = () => running.get()?.refresh();
  const options = () => <BoundaryOptions part={part} tolerance={tolerance} onChoice={onChoice} />;
  return {
    instrument: {
      name: 'boundary',
      title: 'Boundary',
      does: "Outlines the site, and someone else's land inside it.",
      start: (bench) => {
        const now = () => bench.written().site.boundary;
        if (!now()) part.set('anew');
        const started = startOutline(bench, {
          shape: () => 'area',
          begins: () => (now() && part.get() === 'anew' ? ANEW_AGAIN : BEGINS[part.get()]),
          editFor: (points) => ({
            edit: 'draw boundary',
            boundary: boundaryWith(now(), part.get(), points, tolerance.get()),
          }),
          refusal: (points) => boundaryRefusal(now(), part.get(), points),
          written: (result) => {
            if (result !== 'done') return;
            bench.select({ thing: { kind: 'boundary' } });
            part.set('inner');
            started.refresh();
          },
        });
        running.set(started);
        return started;
      },
    },
    Options: options,
  };
}

const PARTS = [
  { key: 'anew', words: 'The boundary' },
  { key: 'further', words: 'A further piece' },
  { key: 'inner', words: "Someone else's land inside" },
] as const;
const TOLERANCES = [
  { key: '0', words: 'surveyed' },
  { key: '2', words: 'within 2 m' },
  { key: '5', words: 'within 5 m' },
  { key: '10', words: 'within 10 m' },
] as const;

interface BoundaryOptionsProps {
  readonly part: Slot<BoundaryPart>;
  readonly tolerance: Slot<number>;
  readonly onChoice: () => void;
}

/** What is outlined, and how far a new boundary may be off; other tolerances are typed on the sheet of the site. */
function BoundaryOptions({ part, tolerance, onChoice }: BoundaryOptionsProps) {
  const chosen = useWatched(part);
  const metres = useWatched(tolerance);
  const choose = (next: BoundaryPart) => {
    part.set(next);
    onChoice();
  };
  return (
    <>
      <Choices label="What is outlined" choices={PARTS} chosen={chosen} onChoose={choose} />
      {chosen === 'anew' && (
        <Choices
          label="How sure the line is"
          choices={TOLERANCES}
          chosen={TOLERANCES.find(({ key }) => Number(key) === metres)?.key ?? '0'}
          onChoose={(key) => tolerance.set(Number(key))}
        />
      )}
    </>
  );
}
