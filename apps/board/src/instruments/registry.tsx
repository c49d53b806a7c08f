// `InstrumentEntry` is in instrument-entry.ts: an instrument imports it from there, or the two would import each other.
import { openClearanceRing } from './clearance-ring/open-ring.tsx';
import { openDrawHole } from './draw-hole/open-draw-hole.tsx';
import type { InstrumentEntry } from './instrument-entry.ts';
import { openMeasureArea, openMeasureLine } from './measure/open-measure.tsx';
import { openPencil } from './pencil/open-pencil.tsx';
import { openReach } from './reach/open-reach.tsx';
import { openRod } from './rod/open-rod.tsx';

/**
 * The instruments of a board, in the order of their buttons; made once for each board that is opened.
 * Everything named here is loaded together, after the board is shown.
 */
export function openInstruments(): readonly InstrumentEntry[] {
  return [
    openDrawHole(),
    openRod(),
    openReach(),
    openMeasureLine(),
    openMeasureArea(),
    openPencil(),
    openClearanceRing(),
  ];
}
