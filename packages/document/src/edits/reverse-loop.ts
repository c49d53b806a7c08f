import { type Hole, holeOf, type Routing } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { writeOfHole } from './open-hole.ts';
import { openLoop } from './open-routing.ts';
import { differentKeys } from './order.ts';
import { reverseHole } from './reverse-hole.ts';
import { placedIn } from './seat-hole.ts';

/**
 * Plays a loop the other way round: the last hole first, and every hole from its green back. The walks go back by the
 * same points; those of the last walk stay with what is now the last hole. An incomplete hole only changes its place.
 * Done twice it is nothing, to the millimetre.
 */
export function reverseLoop(edit: EditNamed<'reverse loop'>, reading: Reading): EditWrites {
  const open = openLoop(reading, edit);
  if (typeof open === 'string') return open;
  const { routing, loop } = open;
  const keys = differentKeys(placedIn(routing, loop.holes));
  const last = loop.holes.length - 1;
  return loop.holes.flatMap((hole, place) => {
    const turned = reverseHole({ edit: 'reverse hole', routing: routing.id, hole }, reading);
    const seat = { in: 'loop', loop: loop.id, key: keys[last - place] ?? 'a0' };
    return [
      writeOfHole(routing.id, hole, 'seat', seat),
      ...(typeof turned === 'string' ? [] : turned),
      waypointsBack(routing, hole, loop.holes[place === 0 ? last : place - 1] ?? hole),
    ];
  });
}

/** The walk after a hole is the one that came before it, walked back. */
function waypointsBack(routing: Routing, hole: string, before: string): Write {
  const walk: Hole['waypoints'] = holeOf(routing, before)?.waypoints ?? [];
  return writeOfHole(routing.id, hole, 'waypoints', walk.length > 0 ? [...walk].reverse() : null);
}
