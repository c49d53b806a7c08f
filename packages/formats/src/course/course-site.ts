import { LIMITS, parseName, type Site } from '@loopwright/model';
import { counted, type NoteBook } from '../note.ts';
import type { SitePlane } from '../survey/site-plane.ts';
import type { CourseElements } from './courses.ts';
import { endOf, type HoleInHand, teeOf } from './hole-in-hand.ts';
import type { MappedArea } from './mapped-areas.ts';
import { siteBases } from './site-bases.ts';
import { siteBoundary } from './site-boundary.ts';
import { type FeatureInHand, siteFeatures } from './site-features.ts';
import type { SortedElements } from './sorted-elements.ts';
import { SURROUNDINGS, type Surroundings } from './surroundings.ts';

interface Land {
  readonly course: CourseElements;
  readonly sorted: SortedElements;
  readonly around: Surroundings;
  readonly plane: SitePlane;
  readonly tees: readonly MappedArea[];
  /** Greens no hole ends on. */
  readonly spareGreens: readonly MappedArea[];
}

/** The land of a mapped course: boundary, bases, and what stands and lies there. */
export function courseSite(land: Land, inPlay: readonly HoleInHand[], notes: NoteBook): Site {
  const { course, plane, sorted, around } = land;
  const clubhouses = sorted.clubhouses.filter(around.includes);
  const [first, last] = [inPlay[0], inPlay.at(-1)];
  const bases =
    first && last ? siteBases(clubhouses, { firstTee: teeOf(first), lastGreen: endOf(last) }, plane.toSite, notes) : [];
  const others = sorted.boundaries.length;
  if (others > 0)
    notes.add(`Left out, without a hole of this course: ${counted(others, 'course outline')}.`, 'Boundary');
  const boundary = siteBoundary(course.boundaries, plane.toSite, notes);
  return {
    name: parseName(course.name, LIMITS.name) ?? 'Imported course',
    north: plane.north,
    location: plane.location,
    ...(boundary && { boundary }),
    bases,
    marks: [],
    features: siteFeatures(thingsOf(land, notes), plane.toSite, notes),
    images: [],
  };
}

function thingsOf({ sorted, around, tees, spareGreens }: Land, notes: NoteBook): readonly FeatureInHand[] {
  const near = sorted.features.filter(({ element }) => around.includes(element));
  const far = sorted.features.length - near.length;
  if (far > 0) notes.add(`Left out, more than ${SURROUNDINGS} m from the course: ${counted(far, 'feature')}.`);
  if (tees.length > 0)
    notes.add(
      `${counted(tees.length, 'tee area')} drawn as ground; each hole has one tee, where its mapped line starts.`,
      'Tees',
    );
  if (spareGreens.length > 0)
    notes.add(`${counted(spareGreens.length, 'green')} that no hole ends on drawn as ground.`, 'Greens');
  if (near.some(({ kind }) => kind === 'range'))
    notes.add('The map does not say which way the range is played: its shots are not checked yet.', 'Range');
  const buildings = sorted.clubhouses
    .filter((clubhouse) => clubhouse.shape.type === 'area' && around.includes(clubhouse))
    .map((element): FeatureInHand => ({ element, kind: 'building', name: element.tags.name ?? 'Clubhouse' }));
  const ground = (areas: readonly MappedArea[], name: string) =>
    areas.map(({ element }): FeatureInHand => ({ element, kind: 'other', name }));
  return [...near, ...buildings, ...ground(tees, 'Tee'), ...ground(spareGreens, 'Green')];
}
