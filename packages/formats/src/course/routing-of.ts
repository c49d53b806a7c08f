import {
  type Base,
  type Hole,
  LIMITS,
  orderKeyAt,
  pointToMillimetre,
  type Relation,
  type Routing,
  type Seat,
  type TurnPoint,
} from '@loopwright/model';
import { grouped } from '../grouped.ts';
import type { NoteBook } from '../note.ts';
import { nameOf, teeOf } from './hole-in-hand.ts';
import { simplifiedLine } from './hole-line.ts';
import { nameBesideNumber } from './hole-number.ts';
import type { LoopsInHand } from './loops-of.ts';
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
  { loops, rounds, spare }: LoopsInHand,
  finished: ReadonlyMap<unknown, HoleWithGreen>,
  base: Base | undefined,
  notes: NoteBook,
): Routing {
  const places: { hole: HoleWithGreen; seat: Seat }[] = [];
  const place = (hole: unknown, seat: Seat) => {
    const done = finished.get(hole);
    if (done) places.push({ hole: done, seat });
  };
  for (const loop of loops)
    for (const [index, hole] of loop.holes.entries())
      place(hole, { in: 'loop', loop: loop.id, key: orderKeyAt(index) });
  for (const [index, hole] of spare.entries()) place(hole, { in: 'spare', key: orderKeyAt(index) });
  const seated = places.map(({ hole, seat }, index) => ({ id: `h${String(index + 1).padStart(3, '0')}`, hole, seat }));
  const sharing = grouped(
    seated.filter(({ hole }) => hole.outline !== undefined),
    ({ hole }) => hole.outline,
  );
  const holes = seated.map((one) => holeOf(one, sharing.get(one.hole.outline) ?? [], notes));
  const idsIn = (loop: string) =>
    seated.filter(({ seat }) => seat.in === 'loop' && seat.loop === loop).map(({ id }) => id);
  return {
    id: 'as-mapped',
    name: 'As mapped',
    locked: false,
    loops: loops.map(({ id, name }) => ({
      id,
      name: name.slice(0, LIMITS.name),
      ...(base && { base: base.id }),
      holes: idsIn(id),
    })),
    rounds: rounds.map((round) => ({ ...round, name: round.name.slice(0, LIMITS.name) })),
    holes,
    spare: seated.filter(({ seat }) => seat.in === 'spare').map(({ id }) => id),
  };
}

function holeOf({ id, hole, seat }: Seated, sharing: readonly Seated[], notes: NoteBook): Hole {
  const about = nameOf(hole);
  const name = nameBesideNumber(hole.tags)?.slice(0, LIMITS.name);
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
