// `InstrumentEntry` is in instrument-entry.ts: an instrument imports it from there, or the two would import each other.
import { openDrawHole } from './draw-hole/open-draw-hole.tsx';
import type { InstrumentEntry } from './instrument-entry.ts';
import { openMeasureArea, openMeasureLine } from './measure/open-measure.tsx';

/**
 * The instruments of a board, in the order of their buttons; made once for each board that is opened.
 * Everything named here is loaded together, after the board is shown.
 */
export function openInstruments(): readonly InstrumentEntry[] {
  return [openDrawHole(), openMeasureLine(), openMeasureArea()];
}
