import './reach.css';
import { openSlot } from '../../live/slot.ts';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { ReachOptions } from './ReachOptions.tsx';
import { openReachChoice } from './reach-choice.ts';
import { type RunningReach, startReach } from './start-reach.ts';

/** How far the model players reach from any point, club by club; it leaves a hole with one press. */
export function openReach(): InstrumentEntry {
  const held = openSlot<RunningReach | undefined>(undefined);
  const choice = openReachChoice();
  const options = () => <ReachOptions held={held} choice={choice} />;
  return {
    instrument: {
      name: 'reach',
      title: 'Reach',
      does: 'How far each model player reaches from a point, and with which club.',
      ends: 'Leave a hole',
      start: (bench) => {
        const running = startReach(bench, choice);
        held.set(running);
        return running;
      },
    },
    Options: options,
  };
}
