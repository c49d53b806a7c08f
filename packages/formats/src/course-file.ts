import { isFields, LIMITS, type Plan, parsePlan } from '@loopwright/model';
import { coursesOf } from './course/courses.ts';
import { planOfCourse } from './course/plan-of-course.ts';
import { sortedElements } from './course/sorted-elements.ts';
import { axisOrderOf, isAcrossTheDateLine, isOnGrid, swapped } from './geojson/axis-order.ts';
import { type Element, keepingPositions, withPositions } from './geojson/element.ts';
import { readElements } from './geojson/read-elements.ts';
import { readJsonText } from './json-text.ts';
import { counted, type Note, type NoteBook, noteBook } from './note.ts';

/** Holes of a file that are told apart into courses. */
const MOST_HOLES = 2_000;

export interface TakenCourse {
  readonly plan: Plan;
  readonly notes: readonly Note[];
}

export type CourseFile =
  | ({ readonly kind: 'board' } & TakenCourse)
  | {
      readonly kind: 'courses';
      /** To choose from: at least one. */
      readonly courses: readonly { readonly name: string; readonly holes: number }[];
      /**
       * The course as a board.
       *
       * @throws RangeError for an index that is not in `courses`
       */
      take(index: number): TakenCourse;
    }
  /** `why`: one sentence with what to do. */
  | { readonly kind: 'unreadable'; readonly why: string };

/**
 * What a dropped file holds: a board of ours, or one or more mapped courses in GeoJSON. Never throws.
 *
 * Cost: O(size of the text); a course is laid out only when it is taken.
 */
export function readCourseFile(text: string): CourseFile {
  const read = readJsonText(text);
  if (read.kind === 'unreadable') return read;
  if (isFields(read.value) && Object.hasOwn(read.value, 'loopwright')) return boardFrom(read.value);
  return coursesFrom(read.value);
}

function boardFrom(value: unknown): CourseFile {
  const parsed = parsePlan(value);
  if (parsed.kind === 'not-a-plan') return { kind: 'unreadable', why: parsed.why };
  return { kind: 'board', plan: parsed.plan, notes: parsed.notes.map((what) => ({ what })) };
}

function coursesFrom(value: unknown): CourseFile {
  const notes = noteBook();
  const read = readElements(value, notes);
  if (read.kind === 'unreadable') return read;
  const placed = placedOnEarth(read.elements, notes);
  if (placed.kind === 'unreadable') return placed;
  const sorted = sortedElements(placed.elements, notes);
  if (sorted.holes.length === 0)
    return {
      kind: 'unreadable',
      why: 'No holes were found in this file: a course needs lines tagged golf=hole, drawn from tee to green.',
    };
  if (sorted.holes.length > MOST_HOLES) return tooManyHoles(sorted.holes.length);
  const courses = coursesOf(sorted);
  const largest = Math.max(...courses.map(({ holes }) => holes.length));
  if (largest > LIMITS.holesPerRouting) return tooManyHoles(largest);
  return {
    kind: 'courses',
    courses: courses.map(({ name, holes }) => ({ name, holes: holes.length })),
    take(index) {
      const course = courses[index];
      if (!course) throw new RangeError('take: index must be one of the courses offered');
      return planOfCourse(course, sorted, notes.all());
    },
  };
}

function tooManyHoles(holes: number): CourseFile {
  const why = `This file holds a course of ${holes} holes; a board takes at most ${LIMITS.holesPerRouting}: cut the file to one course.`;
  return { kind: 'unreadable', why };
}

type Placed =
  | { readonly kind: 'placed'; readonly elements: readonly Element[] }
  | { readonly kind: 'unreadable'; readonly why: string };

/** Positions as longitude and latitude on the grid, turned where they were written the other way round. */
function placedOnEarth(elements: readonly Element[], notes: NoteBook): Placed {
  const order = axisOrderOf(elements);
  if (order.kind === 'unplaced') return { kind: 'unreadable', why: order.why };
  const turned = order.kind === 'latitude first';
  if (turned)
    notes.add(
      order.because === 'range'
        ? 'Positions are written latitude first: turned round to longitude first. Check the place.'
        : 'Positions seem to be written latitude first, since the lengths then fit the pars: turned round. Check the place.',
    );
  const read = turned ? elements.map((element) => withPositions(element, swapped)) : elements;
  if (isAcrossTheDateLine(read))
    return {
      kind: 'unreadable',
      why: 'This course runs across the 180° meridian, where the grid used here is cut: it cannot be placed.',
    };
  const { elements: kept, lost } = keepingPositions(read, isOnGrid);
  if (lost > 0) notes.add(`Left out, since they lie nowhere on the grid: ${counted(lost, 'position')}.`);
  return { kind: 'placed', elements: kept };
}
