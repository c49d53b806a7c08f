import type { BaseId } from '@loopwright/model';
import { openSlot, type Slot } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import { Choices } from '../../style/Choices.tsx';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { type BasePart, startBase } from './start-base.ts';

/** Puts a base where golfers gather, and draws the footprints of its buildings, parking and putting green. */
export function openBase(): InstrumentEntry {
  const part = openSlot<BasePart>('apron');
  const base = openSlot<BaseId | undefined>(undefined);
  const refresh = openSlot<(() => void) | undefined>(undefined);
  const options = () => <BaseOptions part={part} base={base} onChoice={() => refresh.get()?.()} />;
  return {
    instrument: {
      name: 'base',
      title: 'Base',
      does: 'Where golfers gather, with the footprints of what stands there.',
      start: (bench) => {
        const { thing } = bench.selection();
        base.set(thing?.kind === 'base' ? thing.id : undefined);
        part.set(base.get() === undefined ? 'apron' : 'footprint');
        const started = startBase(bench, { part, base });
        refresh.set(started.refresh);
        return started;
      },
    },
    Options: options,
  };
}

const PARTS = [
  { key: 'apron', words: 'A base' },
  { key: 'footprint', words: 'Its footprints' },
] as const;

interface BaseOptionsProps {
  readonly part: Slot<BasePart>;
  readonly base: Slot<BaseId | undefined>;
  readonly onChoice: () => void;
}

/** A further base, or a footprint of the one just put down; there is no choice before the first. */
function BaseOptions({ part, base, onChoice }: BaseOptionsProps) {
  const chosen = useWatched(part);
  if (useWatched(base) === undefined) return null;
  const choose = (next: BasePart) => {
    part.set(next);
    onChoice();
  };
  return <Choices label="What is placed" choices={PARTS} chosen={chosen} onChoose={choose} />;
}
