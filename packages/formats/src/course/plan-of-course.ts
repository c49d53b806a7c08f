import type { Plan } from '@loopwright/model';
import { type Note, type NoteBook, noteBook } from '../note.ts';
import { type SitePlane, sitePlaneAt } from '../survey/site-plane.ts';
import { courseSite } from './course-site.ts';
import { type CourseElements, middleOf } from './courses.ts';
import { directed } from './direct-lines.ts';
import type { HoleInHand } from './hole-in-hand.ts';
import { loopsOf } from './loops-of.ts';
import { mappedAreas } from './mapped-areas.ts';
import { type HoleWithGreen, withGreens } from './match-greens.ts';
import { numberedHoles } from './number-holes.ts';
import { BACK_TEES, routingOf } from './routing-of.ts';
import type { SortedElements } from './sorted-elements.ts';
import { surroundingsOf } from './surroundings.ts';
import { takeHoles } from './take-holes.ts';
import { withinReach } from './within-reach.ts';

/** From this share on the grid's scale at a hole differs enough from the origin's to be told. */
const SCALE_TOLD = 1e-5;

/**
 * A mapped course as a plan of one routing, with notes on everything that was guessed, mended or left out.
 *
 * Cost: O(vertices near the course), plus holes × greens.
 */
export function planOfCourse(
  chosen: CourseElements,
  all: SortedElements,
  before: readonly Note[],
): { readonly plan: Plan; readonly notes: readonly Note[] } {
  const notes = noteBook(before);
  const { course, sorted, centre } = withinReach(chosen, all, notes);
  const around = surroundingsOf(centre, course);
  const plane = sitePlaneAt(around.middle);
  tellPlace(plane, notes);
  tellScale(course, plane, notes);
  const taken = takeHoles(course.holes, plane.toSite, notes);
  const tees = mappedAreas(sorted.tees.filter(around.includes), plane.toSite);
  const greens = mappedAreas(sorted.greens.filter(around.includes), plane.toSite);
  const areas = { tees: tees.map(({ ring }) => ring), greens: greens.map(({ ring }) => ring) };
  const holes = directed(taken.holes, areas, notes);
  const far = directed(taken.far, areas, notes);
  const inRounds = loopsOf(numberedHoles(holes, notes), notes);
  const inHand = [...holes, ...far];
  const finished = withGreens(inHand, areas.greens, notes);
  const own = new Set(finished.map(({ outline }) => outline));
  const site = courseSite(
    { course, sorted, around, plane, tees, spareGreens: greens.filter((_, index) => !own.has(index)) },
    inRounds.loops.flatMap((loop) => loop.holes),
    notes,
  );
  const loops = { ...inRounds, spare: [...inRounds.spare, ...far] };
  const routing = routingOf(loops, finishedBy(inHand, finished), site.bases[0], notes);
  const plan: Plan = {
    loopwright: 1,
    site,
    teeSets: [{ id: BACK_TEES, name: 'Back', player: 'scratch man' }],
    routings: [routing],
    settings: {},
    dispositions: [],
  };
  return { plan, notes: notes.all() };
}

function finishedBy(
  holes: readonly HoleInHand[],
  finished: readonly HoleWithGreen[],
): ReadonlyMap<HoleInHand, HoleWithGreen> {
  const byHole = new Map<HoleInHand, HoleWithGreen>();
  for (const [index, hole] of holes.entries()) {
    const done = finished[index];
    if (done) byHole.set(hole, done);
  }
  return byHole;
}

function tellPlace({ location }: SitePlane, notes: NoteBook): void {
  const { latitude, longitude, epsg, scaleFactor } = location;
  const lat = `${Math.abs(latitude).toFixed(4)}° ${latitude < 0 ? 'S' : 'N'}`;
  const lon = `${Math.abs(longitude).toFixed(4)}° ${longitude < 0 ? 'W' : 'E'}`;
  notes.add(
    `Placed at ${lat}, ${lon} on UTM zone ${epsg % 100} (EPSG:${epsg}); lengths are on the ground, grid scale ${scaleFactor.toFixed(6)} taken out.`,
  );
}

function tellScale(course: CourseElements, plane: SitePlane, notes: NoteBook): void {
  const off = course.holes.map((hole) => Math.abs(plane.relativeScaleAt(middleOf(hole)) - 1));
  const worst = Math.max(0, ...off);
  if (worst > SCALE_TOLD)
    notes.add(
      `The course is so wide, and so near the edge of its zone, that lengths far from its middle may be off by ${(worst * 100_000).toFixed(1)} in 100,000.`,
    );
}
