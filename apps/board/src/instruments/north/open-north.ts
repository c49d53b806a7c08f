import type { InstrumentEntry } from '../instrument-entry.ts';
import { startNorth } from './start-north.ts';

/** Says where north is by a line drawn to it. */
export function openNorth(): InstrumentEntry {
  return {
    instrument: {
      name: 'north',
      title: 'North',
      does: 'A line drawn to north turns the north arrow; nothing on the paper is turned.',
      start: startNorth,
    },
  };
}
