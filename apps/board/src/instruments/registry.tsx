// `InstrumentEntry` is in instrument-entry.ts: an instrument imports it from there, or the two would import each other.
import { openBase } from './base/open-base.tsx';
import { openBoundary } from './boundary/open-boundary.tsx';
import { openClearanceRing } from './clearance-ring/open-ring.tsx';
import { openDrawHole } from './draw-hole/open-draw-hole.tsx';
import { openFeature } from './feature/open-feature.tsx';
import { openGreenOutline } from './green-outline/open-green-outline.ts';
import type { InstrumentEntry } from './instrument-entry.ts';
import { openMeasureArea, openMeasureLine } from './measure/open-measure.tsx';
import { openNorth } from './north/open-north.ts';
import { openPencil } from './pencil/open-pencil.tsx';
import { openReach } from './reach/open-reach.tsx';
import { openRod } from './rod/open-rod.tsx';
import { openScaleImage } from './scale-image/open-scale-image.tsx';
import { openSiteMark } from './site-mark/open-site-mark.tsx';
import { openWaypoints } from './waypoints/open-waypoints.tsx';

/**
 * The instruments of a board, in the order of their buttons; made once for each board that is opened.
 * Everything named here is loaded together, after the board is shown.
 */
export function openInstruments(): readonly InstrumentEntry[] {
  return [
    openDrawHole(),
    openSiteMark(),
    openRod(),
    openReach(),
    openWaypoints(),
    openMeasureLine(),
    openMeasureArea(),
    openPencil(),
    openClearanceRing(),
    openBoundary(),
    openBase(),
    openFeature(),
    openScaleImage(),
    openNorth(),
    openGreenOutline(),
  ];
}
