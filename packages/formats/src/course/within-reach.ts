import { type Element, keepingPositions, type LonLat } from '../geojson/element.ts';
import { counted, type NoteBook } from '../note.ts';
import { type CourseElements, middleOf, roughDistance } from './courses.ts';
import { mostCentral } from './most-central.ts';
import type { SortedElements } from './sorted-elements.ts';

/** A hole farther than this from the middle of the others is left out (m). */
const FARTHEST_HOLE = 30_000;
/** A single position farther than this from the middle is a slip of the pen (m). */
const FARTHEST_POSITION = 50_000;

export interface WithinReach {
  /** The middle of the most central hole. */
  readonly centre: LonLat;
  readonly course: CourseElements;
  readonly sorted: SortedElements;
}

/** A course without what lies so far away that it cannot be drawn on one plane with it; what is left out is noted. */
export function withinReach(course: CourseElements, sorted: SortedElements, notes: NoteBook): WithinReach {
  const centre = mostCentral(course.holes.map(middleOf), roughDistance) ?? { lon: 0, lat: 0 };
  const near = course.holes.filter((hole) => roughDistance(middleOf(hole), centre) <= FARTHEST_HOLE);
  const lost = course.holes.length - near.length;
  if (lost > 0) notes.add(`Left out, more than ${FARTHEST_HOLE / 1000} km from the others: ${counted(lost, 'hole')}.`);
  let positions = 0;
  const trimmed = (elements: readonly Element[]) => {
    const kept = keepingPositions(elements, (position) => roughDistance(position, centre) <= FARTHEST_POSITION);
    positions += kept.lost;
    return kept.elements;
  };
  const holes = trimmed(near);
  const boundaries = trimmed(course.boundaries);
  if (positions > 0)
    notes.add(
      `Left out, more than ${FARTHEST_POSITION / 1000} km from the course: ${counted(positions, 'position')} of holes and boundary.`,
    );
  return {
    centre,
    course: { ...course, holes, boundaries },
    sorted: {
      holes,
      boundaries: sorted.boundaries.filter((boundary) => !course.boundaries.includes(boundary)),
      tees: trimmed(sorted.tees),
      greens: trimmed(sorted.greens),
      clubhouses: trimmed(sorted.clubhouses),
      features: sorted.features.flatMap(({ element, kind }) =>
        trimmed([element]).map((kept) => ({ element: kept, kind })),
      ),
    },
  };
}
