import { bearingOf, unitVector } from '@loopwright/geometry';
import { type Green, type Hole, orderKeyAt, type Seat, seededRandom } from '@loopwright/model';
import { greenOutline } from './green-outline.ts';
import { EAST_NINE, type LaidHole, SPARE_HOLES, WEST_NINE } from './laid-holes.ts';
import { at, outlined } from './place.ts';

/** The shapes of the greens follow from this number and nothing else. */
const GREENS_SEED = 1871;

export const WEST_LOOP = 'west';
export const EAST_LOOP = 'east';

/** Every hole of the demo, in id order as a routing keeps them. */
export function demoHoles(): readonly Hole[] {
  const random = seededRandom(GREENS_SEED);
  const seatedIn = (loop: string) => (laid: LaidHole, index: number) =>
    holeFrom(laid, { in: 'loop', loop, key: orderKeyAt(index) }, random);
  return [
    ...WEST_NINE.map(seatedIn(WEST_LOOP)),
    ...EAST_NINE.map(seatedIn(EAST_LOOP)),
    ...SPARE_HOLES.map((laid, index) => holeFrom(laid, { in: 'spare', key: orderKeyAt(index) }, random)),
  ].sort((a, b) => (a.id < b.id ? -1 : 1));
}

function holeFrom(laid: LaidHole, seat: Seat, random: () => number): Hole {
  const par = laid.par ?? 'by length';
  return {
    id: laid.id,
    name: laid.name,
    ...(laid.note && { note: laid.note }),
    seat,
    tees: {
      back: at(laid.back),
      ...(laid.middle && { middle: at(laid.middle) }),
      ...(laid.forward && { forward: at(laid.forward) }),
    },
    turnPoints: laid.turns.map((place, index) => ({ id: `${laid.id}-${index + 1}`, at: at(place) })),
    green: greenFrom(laid, random),
    par: { men: par, women: par },
    verdict: laid.verdict ?? 'undecided',
    ...(laid.reason && { verdictReason: laid.reason }),
    pinned: [],
    waypoints: outlined(laid.walkBy ?? []),
    relations: [],
  };
}

/** A green lies along the last leg into it. */
function greenFrom(laid: LaidHole, random: () => number): Green {
  const [length, width] = laid.oval;
  const centre = at(laid.green);
  const towards = unitVector(at(laid.turns.at(-1) ?? laid.back), centre) ?? { x: 0, y: 1 };
  return {
    centre,
    length,
    width,
    bearing: bearingOf(towards),
    outline: greenOutline(length, width, towards, random),
  };
}
