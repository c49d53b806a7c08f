import { type HoleId, isId, LIMITS, type Routing, type SitePoint } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { cellsOfHole, isUnused, shiftedPart } from './hole-parts.ts';
import { openHole, writeOfHole } from './open-hole.ts';
import { seatNewInTray } from './seat-hole.ts';

/**
 * Copies a hole into the spare tray, `by` beside it: its places, its green, its corridor, its par, name and note. What
 * was said of that one on its own ground (verdict, pins, relations) is not said of the copy.
 *
 * @returns `nothing` when the routing is locked or full, when there was a hole of that id, or when the copy would leave
 *   the site plane
 */
export function copyHole(edit: EditNamed<'copy hole'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const { routing, hole } = open;
  if (routing.holes.length >= LIMITS.holesPerRouting) return 'nothing';
  const copied = copiedParts(reading, routing, { hole: hole.id, as: edit.as }, edit.by);
  return copied ? [...copied, ...seatNewInTray(routing, edit.as)] : 'nothing';
}

const OWN_GROUND = /^(?:seat|verdict|pin:.*|relation:.*)$/;

/**
 * The parts of a copied hole, all but its seat.
 *
 * @returns `undefined` when the id was used before or the copy would leave the site plane
 * @throws RangeError if the new id is none: the caller's bug
 */
export function copiedParts(
  reading: Reading,
  routing: Routing,
  { hole, as }: { readonly hole: HoleId; readonly as: HoleId },
  by: SitePoint,
): readonly Write[] | undefined {
  if (!isId(as)) throw new RangeError('copy hole: that is no id');
  if (!isUnused(cellsOfHole(reading, routing.id, as))) return undefined;
  const parts = cellsOfHole(reading, routing.id, hole);
  const writes: Write[] = [];
  for (const part of parts.keys()) {
    if (OWN_GROUND.test(part)) continue;
    const value = shiftedPart(parts, part, by);
    if (value === undefined) return undefined;
    writes.push(writeOfHole(routing.id, as, part, value));
  }
  return writes;
}
