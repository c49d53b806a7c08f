import { ringArea, ringContains } from '@loopwright/geometry';
import type { Element, LonLat, Tags } from '../geojson/element.ts';
import { runsOf } from '../geojson/element.ts';
import { grouped } from '../grouped.ts';
import { mappedNumber } from './hole-number.ts';
import type { SortedElements } from './sorted-elements.ts';

/** One course of a file: its holes, and the outlines they lie in. */
export interface CourseElements {
  readonly name: string;
  readonly holes: readonly Element[];
  readonly boundaries: readonly Element[];
}

/** Tags by which a hole says which course it is of, the surest first. */
const COURSE_TAGS = [
  'golf:course:name',
  'golf:course:id',
  'golf:course',
  'course:name',
  'course:id',
  'course_id',
  'course',
];

/** From so many doubled numbers on, one course is really two. */
const DOUBLED = 7;

/**
 * The courses of a file: by the name or id their holes carry, else by the course outline a hole lies in, else one.
 *
 * Holes without either join the course of the nearest hole. One outline that holds most numbers twice is two courses,
 * told apart by the shortest walks.
 */
export function coursesOf({ holes, boundaries }: SortedElements): readonly CourseElements[] {
  const claims = holes.map((hole) => ({ hole, course: courseTag(hole.tags) ?? outlineOf(hole, boundaries) }));
  const sure = claims.filter(({ course }) => course !== undefined);
  const settled = claims.map(({ hole, course }) => ({ hole, course: course ?? nearestCourse(hole, sure) ?? '' }));
  const groups = [...grouped(settled, ({ course }) => course).values()];
  const courses = groups.flatMap((members) => {
    const own = members.map(({ hole }) => hole);
    const around = boundaries.filter((boundary) => own.some((hole) => contains(boundary, middleOf(hole))));
    const withParts = boundaries.filter((boundary) => around.includes(boundary) || sharesName(boundary, around));
    const [first] = members;
    const course = first?.course;
    const tag = typeof course === 'string' && course !== '' ? course : undefined;
    const name = tag ?? (typeof course === 'object' ? course.tags.name : around[0]?.tags.name);
    return apart(own).map((part) => ({ name, holes: part, boundaries: withParts }));
  });
  return named(courses);
}

function courseTag(tags: Tags): string | undefined {
  for (const name of COURSE_TAGS) if (tags[name] !== undefined) return tags[name];
  return undefined;
}

/** The smallest course outline a hole's middle lies in. */
function outlineOf(hole: Element, boundaries: readonly Element[]): Element | undefined {
  const at = middleOf(hole);
  let best: { boundary: Element; area: number } | undefined;
  for (const boundary of boundaries) {
    if (!contains(boundary, at)) continue;
    const area = runsOf(boundary.shape).reduce((sum, ring) => sum + Math.abs(ringArea(ring.map(asPoint))), 0);
    if (best === undefined || area < best.area) best = { boundary, area };
  }
  return best?.boundary;
}

function contains(boundary: Element, at: LonLat): boolean {
  return runsOf(boundary.shape).some((ring) => ringContains(ring.map(asPoint), asPoint(at)));
}

const asPoint = ({ lon, lat }: LonLat) => ({ x: lon, y: lat });

function sharesName(boundary: Element, around: readonly Element[]): boolean {
  const name = boundary.tags.name;
  return name !== undefined && around.some(({ tags }) => tags.name === name);
}

/** A place in the middle of a hole's line. */
export function middleOf(hole: Element): LonLat {
  const positions = runsOf(hole.shape).flat();
  return positions[Math.floor(positions.length / 2)] ?? { lon: 0, lat: 0 };
}

function nearestCourse<Course>(
  hole: Element,
  sure: readonly { readonly hole: Element; readonly course: Course }[],
): Course | undefined {
  let best: { course: Course; apart: number } | undefined;
  for (const other of sure) {
    const apart = roughDistance(middleOf(hole), middleOf(other.hole));
    if (best === undefined || apart < best.apart) best = { course: other.course, apart };
  }
  return best?.course;
}

/** Metres between two places, good to 1 % over a few kilometres: only for telling near from far. */
export function roughDistance(a: LonLat, b: LonLat): number {
  const shrink = Math.cos((((a.lat + b.lat) / 2) * Math.PI) / 180);
  const [dx, dy] = [(a.lon - b.lon) * 111_320 * shrink, (a.lat - b.lat) * 110_574];
  return Math.sqrt(dx * dx + dy * dy);
}

/** Two courses in one: from hole to hole by the shortest walk, the holes left over are the other. */
function apart(holes: readonly Element[]): readonly (readonly Element[])[] {
  const byNumber = grouped(holes, ({ tags }) => {
    const mapped = mappedNumber(tags);
    return mapped && mapped.group === '' ? mapped.number : 0;
  });
  const doubled = [...byNumber].filter(([number, claims]) => number > 0 && claims.length === 2);
  if (doubled.length < DOUBLED || doubled.length * 3 < holes.length) return [holes];
  const first: Element[] = [];
  let from: LonLat | undefined;
  for (const [, claims] of doubled.sort(([a], [b]) => a - b)) {
    const start = from;
    const walk = (hole: Element) => (start ? roughDistance(start, runsOf(hole.shape)[0]?.[0] ?? start) : 0);
    const next = claims.reduce((near, claim) => (walk(claim) < walk(near) ? claim : near));
    first.push(next);
    from = runsOf(next.shape).at(-1)?.at(-1);
  }
  const taken = new Set([...first]);
  return [first, holes.filter((hole) => !taken.has(hole))];
}

function named(
  courses: readonly {
    readonly name: string | undefined;
    readonly holes: readonly Element[];
    readonly boundaries: readonly Element[];
  }[],
): readonly CourseElements[] {
  const used = new Map<string, number>();
  return courses.map((course, index) => {
    const plain = course.name ?? (courses.length === 1 ? 'Imported course' : `Course ${index + 1}`);
    const times = (used.get(plain) ?? 0) + 1;
    used.set(plain, times);
    return { ...course, name: times === 1 ? plain : `${plain} (${times})` };
  });
}
