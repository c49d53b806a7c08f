import { orderKeyAt, parsePoint } from '@loopwright/model';
import { partsOf, type Write } from '../cells.ts';
import { parsePlacedTurn } from '../reading/read-hole.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { type OpenHole, openHole } from './open-hole.ts';
import { rearTee } from './rear-tee.ts';
import { turnedSite } from './turned-site.ts';

/**
 * Plays a hole the other way: the rear tee goes where the green was, the green where the rear tee was, and the turn
 * points come in the opposite order. The green keeps its size, lie and outline; the tees keep their names and stand to
 * the rear tee as they did, seen along the new line of play. Reversing twice is nothing, to the millimetre.
 *
 * @returns `nothing` for a hole without green or without a tee: it has no other way yet
 */
export function reverseHole(edit: EditNamed<'reverse hole'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const { hole } = open;
  const rear = rearTee(hole, reading.plan.teeSets);
  if (!hole.green || !rear) return 'nothing';
  const centre = hole.green.centre;
  const before = { at: rear.at, towards: hole.turnPoints[0]?.at ?? centre };
  const after = { at: centre, towards: hole.turnPoints.at(-1)?.at ?? rear.at };
  const writes: Write[] = [open.write('green', { x: rear.at.x, y: rear.at.y })];
  for (const [teeSet, at] of Object.entries(hole.tees)) {
    const to = parsePoint(teeSet === rear.id ? centre : turnedSite(at, before, after));
    if (to === undefined) return 'nothing';
    writes.push(open.write(`tee:${teeSet}`, to));
  }
  return [...writes, ...turnsReversed(open, reading)];
}

/** The turn points swap their places in the order; equal or crowded keys get fresh ones. */
function turnsReversed(open: OpenHole, reading: Reading): readonly Write[] {
  const { routing, hole } = open;
  const parts = partsOf(reading.cells, 'holes', `${routing.id}/${hole.id}`);
  const orders = hole.turnPoints.map(({ id }) => parsePlacedTurn(id, parts.get(`turn:${id}`))?.order ?? '');
  const isStrict = orders.every((order, index) => index === 0 || (orders[index - 1] ?? '') < order);
  const last = orders.length - 1;
  return hole.turnPoints.map(({ id, at }, index) => {
    const order = (isStrict ? orders[last - index] : undefined) ?? orderKeyAt(last - index);
    return open.write(`turn:${id}`, { x: at.x, y: at.y, order });
  });
}
