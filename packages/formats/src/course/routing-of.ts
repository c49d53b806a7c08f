import { distanceBetween } from '@loopwright/geometry';
import {
  type Base,
  type Hole,
  LIMITS,
  orderKeyAt,
  parseName,
  pointToMillimetre,
  type Relation,
  type Routing,
  type Seat,
  type TurnPoint,
} from '@loopwright/model';
import { grouped } from '../grouped.ts';
import type { NoteBook } from '../note.ts';
import { endOf, type HoleInHand, nameOf, teeOf } from './hole-in-hand.ts';
import { simplifiedLine } from './hole-line.ts';
import { nameBesideNumber } from './hole-number.ts';
import type { LoopInHand, LoopsInHand } from './loops-of.ts';
import { mappedPar } from './mapped-par.ts';
import type { HoleWithGreen } from './match-greens.ts';

/** The one tee set of an imported course: the start of each mapped line. */
export const BACK_TEES = 'back';

interface Seated {
  readonly id: string;
  readonly hole: HoleWithGreen;
  readonly seat: Seat;
}

/** The routing as mapped: loops, rounds and holes, each hole's length that of its mapped line. */
export function routingOf(
  loopsInHand: LoopsInHand,
  finished: ReadonlyMap<HoleInHand, HoleWithGreen>,
  base: Base | undefined,
  notes: NoteBook,
): Routing {
  const { loops, rounds } = loopsInHand;
  const seated = seatedHoles(loopsInHand, finished);
  const onMappedGreens = seated.filter(({ hole }) => hole.outline !== undefined);
  const sharing = grouped(onMappedGreens, ({ hole }) => hole.outline);
  const idsIn = (loop: string) =>
    seated.filter(({ seat }) => seat.in === 'loop' && seat.loop === loop).map(({ id }) => id);
  return {
    id: 'as-mapped',
    name: 'As mapped',
    locked: false,
    loops: loops.map((loop) => ({
      id: loop.id,
      name: parseName(loop.name, LIMITS.name) ?? loop.id,
      ...(base && returnsTo(base, loop, notes) && { base: base.id }),
      holes: idsIn(loop.id),
    })),
    rounds: rounds.map((round) => ({ ...round, name: parseName(round.name, LIMITS.name) ?? round.id })),
    holes: seated.map((one) => holeOf(one, sharing.get(one.hole.outline) ?? [], notes)),
    spare: seated.filter(({ seat }) => seat.in === 'spare').map(({ id }) => id),
  };
}

/** Every hole with its id and seat: loop by loop in order, then the tray. */
function seatedHoles(
  { loops, spare }: LoopsInHand,
  finished: ReadonlyMap<HoleInHand, HoleWithGreen>,
): readonly Seated[] {
  const seats = [
    ...loops.flatMap((loop) =>
      loop.holes.map((hole, index): [HoleInHand, Seat] => [
        hole,
        { in: 'loop', loop: loop.id, key: orderKeyAt(index) },
      ]),
    ),
    ...spare.map((hole, index): [HoleInHand, Seat] => [hole, { in: 'spare', key: orderKeyAt(index) }]),
  ];
  return seats.flatMap(([inHand, seat], index) => {
    const hole = finished.get(inHand);
    return hole ? [{ id: `h${String(index + 1).padStart(3, '0')}`, hole, seat }] : [];
  });
}

/**
 * A loop leaves from a base and returns to it when both its first tee and its last green lie within this (m): the
 * longest walk from ninth green to tenth tee before a stop, by the calibration on mapped courses.
 */
const RETURNS_WITHIN = 400;

function returnsTo(base: Base, { name, holes }: LoopInHand, notes: NoteBook): boolean {
  const [first, last] = [holes[0], holes.at(-1)];
  if (!first || !last) return false;
  const off = Math.max(distanceBetween(base.apron, teeOf(first)), distanceBetween(base.apron, endOf(last)));
  if (off <= RETURNS_WITHIN) return true;
  notes.add(
    `It lies ${Math.round(off)} m from an end of '${name}': no walks to and from it are counted for that loop.`,
    base.name,
  );
  return false;
}

function holeOf({ id, hole, seat }: Seated, sharing: readonly Seated[], notes: NoteBook): Hole {
  const about = nameOf(hole);
  const name = parseName(nameBesideNumber(hole.tags), LIMITS.name);
  const others = sharing.filter((other) => other.id !== id);
  if (others.length > 0)
    notes.add(`It shares its green with ${others.map((other) => nameOf(other.hole)).join(' and ')}.`, about);
  return {
    id,
    ...(name && { name }),
    seat,
    tees: { [BACK_TEES]: teeOf(hole) },
    turnPoints: turnPointsOf(id, hole, notes),
    green: hole.green,
    par: mappedPar(hole.tags, about, notes),
    verdict: 'undecided',
    pinned: [],
    waypoints: [],
    relations: others
      .slice(0, LIMITS.relationsPerHole)
      .map((other): Relation => ({ kind: 'shares its green with', hole: other.id })),
  };
}

function turnPointsOf(id: string, hole: HoleWithGreen, notes: NoteBook): readonly TurnPoint[] {
  const { line, dropped, lengthChange, isSpread } = simplifiedLine(hole.line);
  if (dropped > 0) {
    const change = Math.abs(lengthChange) < 0.05 ? 'the same length' : `${Math.abs(lengthChange).toFixed(1)} m shorter`;
    const moved = isSpread ? ', and moved outward so that the length stays true' : '';
    notes.add(
      `Its line turns at ${line.length - 2 + dropped} points: the ${line.length - 2} that matter were kept${moved} (${change}).`,
      nameOf(hole),
    );
  }
  return line.slice(1, -1).map((at, index) => ({ id: `${id}-t${index + 1}`, at: pointToMillimetre(at) }));
}
