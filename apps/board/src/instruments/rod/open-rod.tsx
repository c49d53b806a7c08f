import './rod.css';
import { openSlot } from '../../live/slot.ts';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { type HeldRod, RodOptions } from './RodOptions.tsx';
import { openRodChoice } from './rod-choice.ts';
import { startRod } from './start-rod.ts';

/** A rod of chosen legs, swung about a pinned end; it leaves a hole with one press. */
export function openRod(): InstrumentEntry {
  const held = openSlot<HeldRod | undefined>(undefined);
  const choice = openRodChoice();
  const options = () => <RodOptions held={held} choice={choice} />;
  return {
    instrument: {
      name: 'rod',
      title: 'Rod',
      does: 'Legs of fixed length, swung about a tee or a green; leaves a hole.',
      ends: 'Leave a hole',
      start: (bench) => {
        const running = startRod(bench, choice);
        held.set({ bench, hand: running.hand });
        return running;
      },
    },
    Options: options,
  };
}
