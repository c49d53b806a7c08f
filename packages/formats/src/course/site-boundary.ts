import { ringIsSimple } from '@loopwright/geometry';
import { type Boundary, LIMITS, type Ring, type SitePoint } from '@loopwright/model';
import type { Element, LonLat } from '../geojson/element.ts';
import type { NoteBook } from '../note.ts';
import { ringOnSite } from './site-features.ts';

/**
 * How far a mapped boundary may be off (m).
 *
 * Calibrated: on 31 mapped courses boundaries are simplified by about 6 m, and most alarms at the edge were the map's.
 */
const MAPPED_TOLERANCE = 10;

/** The edge of the land from the mapped course outlines; undefined when there are none. */
export function siteBoundary(
  elements: readonly Element[],
  toSite: (position: LonLat) => SitePoint,
  notes: NoteBook,
): Boundary | undefined {
  const outlines: Ring[] = [];
  const inner: Ring[] = [];
  const thinned = { count: 0, within: 0 };
  for (const { shape } of elements) {
    for (const rings of shape.type === 'area' ? shape.parts : []) {
      for (const [index, ring] of rings.entries()) {
        const outline = ringOnSite(ring, toSite, thinned);
        if (!outline) notes.add('An outline without area was left out.', 'Boundary');
        else (index === 0 ? outlines : inner).push(outline);
      }
    }
  }
  if (outlines.length === 0) {
    notes.add('No boundary is mapped around the holes: nothing is said about the edge of the land.', 'Boundary');
    return undefined;
  }
  tell({ outlines, inner }, thinned.within, notes);
  const most = LIMITS.boundaryOutlines;
  return { outlines: outlines.slice(0, most), inner: inner.slice(0, most), tolerance: MAPPED_TOLERANCE };
}

function tell(rings: { outlines: readonly Ring[]; inner: readonly Ring[] }, within: number, notes: NoteBook): void {
  const about = 'Boundary';
  const { outlines, inner } = rings;
  notes.add(`Taken from the map, not surveyed: ${MAPPED_TOLERANCE} m are allowed for its error.`, about);
  if (outlines.length > 1) notes.add(`The land lies in ${outlines.length} pieces.`, about);
  if (within > 0) notes.add(`Drawn with fewer points, at most ${within.toFixed(1)} m off.`, about);
  if ([...outlines, ...inner].some((ring) => !ringIsSimple(ring)))
    notes.add('It crosses itself: check its outline; which side is inside may be wrong there.', about);
  const most = LIMITS.boundaryOutlines;
  if (outlines.length > most || inner.length > most)
    notes.add(`Only ${most} outlines and ${most} inner ones were taken in.`, about);
}
