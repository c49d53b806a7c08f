import { boundsOf, distanceBetween, polylineLength } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';
import type { Element, LonLat } from '../geojson/element.ts';
import type { NoteBook } from '../note.ts';
import { type HoleInHand, nameOf } from './hole-in-hand.ts';
import { joinedPieces } from './hole-line.ts';
import { mappedNumber } from './hole-number.ts';
import { mostCentral } from './most-central.ts';

/** Ends of two lines within this are the same place (m). */
const SAME_PLACE = 1;
/** A gap in a hole's line is told from this on (m). */
const GAP = 2;
/** A line shorter than this is no hole (m). */
const SHORTEST = 10;
/** Beyond this from the most central hole a hole is set aside (m). */
const FAR = 3_000;

export interface TakenHoles {
  readonly holes: readonly HoleInHand[];
  /** Too far from the others to be played with them. */
  readonly far: readonly HoleInHand[];
}

/** The mapped hole lines on the site plane; what is no line of play, or there twice, is left out with a note. */
export function takeHoles(
  elements: readonly Element[],
  toSite: (position: LonLat) => SitePoint,
  notes: NoteBook,
): TakenHoles {
  const lines = elements.flatMap(({ tags, shape }) => {
    if (shape.type !== 'line') return [];
    const { line, gap } = joinedPieces(shape.pieces.map((piece) => piece.map(toSite)));
    const hole: HoleInHand = { tags, line, mapped: mappedNumber(tags) };
    if (line.length < 2 || polylineLength(line) < SHORTEST) {
      notes.add(`Its line is shorter than ${SHORTEST} m: left out.`, nameOf(hole));
      return [];
    }
    tell(hole, shape.pieces.length, gap, notes);
    return [hole];
  });
  const distinct = withoutDoubles(withJoinedNumbers(lines, notes), notes);
  return apartFromFar(distinct, notes);
}

function tell(hole: HoleInHand, pieces: number, gap: number, notes: NoteBook): void {
  const about = nameOf(hole);
  if (pieces > 1)
    notes.add(
      `Its line came in ${pieces} pieces: joined${gap > GAP ? `, across a gap of ${Math.round(gap)} m` : ''}.`,
      about,
    );
  if (hole.mapped?.from === 'name') notes.add('Its number was taken from its name.', about);
  if (hole.mapped?.others) notes.add(`It carries several numbers (${hole.tags.ref}): the first was used.`, about);
}

/** Two lines with one number that meet end to end are one hole drawn in two. */
function withJoinedNumbers(holes: readonly HoleInHand[], notes: NoteBook): readonly HoleInHand[] {
  const joined: HoleInHand[] = [];
  for (const hole of holes) {
    const number = hole.mapped;
    const index = joined.findIndex(({ mapped, line }) => {
      const isSame = number && mapped && mapped.number === number.number && mapped.group === number.group;
      return isSame && meet(line, hole.line);
    });
    const other = joined[index];
    if (!other) joined.push(hole);
    else {
      joined[index] = { ...other, line: joinedPieces([other.line, hole.line]).line };
      notes.add('Its line came as two lines that meet: joined.', nameOf(hole));
    }
  }
  return joined;
}

/** End to end, and not the same line twice. */
function meet(first: readonly SitePoint[], second: readonly SitePoint[]): boolean {
  const near = (a: SitePoint | undefined, b: SitePoint | undefined) =>
    a !== undefined && b !== undefined && distanceBetween(a, b) <= SAME_PLACE;
  const [start, end, from, to] = [first[0], first.at(-1), second[0], second.at(-1)];
  const touching = [near(end, from), near(end, to), near(start, from), near(start, to)].filter(Boolean).length;
  return touching === 1;
}

function withoutDoubles(holes: readonly HoleInHand[], notes: NoteBook): readonly HoleInHand[] {
  const kept: HoleInHand[] = [];
  for (const hole of holes) {
    const double = kept.find(({ line }) => isSameLine(line, hole.line) || isSameLine(line.toReversed(), hole.line));
    if (!double) kept.push(hole);
    else notes.add('It is in the file twice: taken once.', nameOf(hole));
  }
  return kept;
}

function isSameLine(a: readonly SitePoint[], b: readonly SitePoint[]): boolean {
  if (a.length !== b.length) return false;
  return a.every((point, index) => {
    const other = b[index];
    return other !== undefined && distanceBetween(point, other) <= SAME_PLACE;
  });
}

function apartFromFar(holes: readonly HoleInHand[], notes: NoteBook): TakenHoles {
  const middle = mostCentral(holes.map(middleOnSite), distanceBetween);
  const isFar = (hole: HoleInHand) => middle !== undefined && distanceBetween(middleOnSite(hole), middle) > FAR;
  const far = holes.filter(isFar);
  for (const hole of far)
    notes.add('It lies kilometres from the other holes: it is in the spare tray. Check its place.', nameOf(hole));
  return { holes: holes.filter((hole) => !isFar(hole)), far };
}

function middleOnSite({ line }: HoleInHand): SitePoint {
  const { minX, minY, maxX, maxY } = boundsOf(line);
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
}
