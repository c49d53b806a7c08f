import type { ComponentType } from 'react';
import type { Instrument } from './instrument.ts';

/** An instrument on the table, with what may be chosen beside it while it is in the hand. */
export interface InstrumentEntry {
  readonly instrument: Instrument;
  /** Shown in the strip under the instruments. What is chosen is kept in slots that the maker of the entry closes over. */
  readonly Options?: ComponentType;
}
