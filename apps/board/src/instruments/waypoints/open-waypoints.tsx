import { openSlot, type Slot } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import { Choices } from '../../style/Choices.tsx';
import type { InstrumentEntry } from '../instrument-entry.ts';
import { startWaypoints, type WaypointUse } from './start-waypoints.ts';

/** Leads the walk from a green to the next tee around what should not be crossed. */
export function openWaypoints(): InstrumentEntry {
  const use = openSlot<WaypointUse>('lead');
  const options = () => <WaypointOptions use={use} />;
  return {
    instrument: {
      name: 'waypoints',
      title: 'Waypoints',
      does: 'Leads a walk from a green to the next tee by waypoints.',
      start: (bench) => startWaypoints(bench, use),
    },
    Options: options,
  };
}

const USES = [
  { key: 'lead', words: 'Lead' },
  { key: 'take out', words: 'Take out' },
] as const;

function WaypointOptions({ use }: { readonly use: Slot<WaypointUse> }) {
  return <Choices label="A press" choices={USES} chosen={useWatched(use)} onChoose={use.set} />;
}
