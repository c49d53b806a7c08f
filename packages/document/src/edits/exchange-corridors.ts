import { type HoleId, holeOf, type Routing } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { cellsOfHole, plainAt } from './hole-parts.ts';
import { openHole, writeOfHole } from './open-hole.ts';

/** What lies on the ground and stays there: the holes change places over it. */
const ON_THE_GROUND = /^(?:tee:.*|turn:.*|green|green-shape|waypoints|corridor|pin:.*)$/;

/**
 * Each of two holes plays where the other did: tees, turns, green, the way to the next tee, the corridor's widths and
 * the pins change hands. Number, name, verdict, a fixed par and the note stay. A relation is one of the ground (a shared
 * green, a crossing), so it goes with the ground too, also where a third hole states it. Done twice it is nothing.
 */
export function exchangeCorridors(edit: EditNamed<'exchange corridors'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const { routing, hole } = open;
  const other = holeOf(routing, edit.with);
  if (!other || other.seat.in === 'removed') return 'gone';
  if (other.id === hole.id) return 'nothing';
  return [
    ...groundWrites(reading, routing, [hole.id, other.id]),
    ...relationWrites(reading, routing, [hole.id, other.id]),
  ];
}

type Pair = readonly [HoleId, HoleId];

function groundWrites(reading: Reading, routing: Routing, [one, two]: Pair): readonly Write[] {
  const ones = cellsOfHole(reading, routing.id, one);
  const twos = cellsOfHole(reading, routing.id, two);
  const parts = new Set([...ones.keys(), ...twos.keys()].filter((part) => ON_THE_GROUND.test(part)));
  return [...parts].flatMap((part) => [
    writeOfHole(routing.id, one, part, plainAt(twos, part)),
    writeOfHole(routing.id, two, part, plainAt(ones, part)),
  ]);
}

const RELATION = /^(relation:[a-z]+:)(.+)$/;

/** Every relation is now between those holes that lie where the holes it was stated of lay. */
function relationWrites(reading: Reading, routing: Routing, [one, two]: Pair): readonly Write[] {
  const lay = (hole: HoleId) => (hole === one ? two : hole === two ? one : hole);
  const laid = (part: string) => part.replace(RELATION, (_, kind: string, to: string) => `${kind}${lay(to)}`);
  return routing.holes.flatMap(({ id }) => {
    const now = cellsOfHole(reading, routing.id, id);
    const before = cellsOfHole(reading, routing.id, lay(id));
    const parts = new Set([...now.keys(), ...[...before.keys()].map(laid)].filter((part) => RELATION.test(part)));
    return [...parts].map((part) => writeOfHole(routing.id, id, part, plainAt(before, laid(part))));
  });
}
