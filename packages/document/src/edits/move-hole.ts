import type { SitePoint } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { cellsOfHole, shiftedPart } from './hole-parts.ts';
import { type OpenHole, openHole } from './open-hole.ts';

/**
 * Shifts a whole hole: its tees, turn points, green and the waypoints of the walk after it. Each part stays a key of
 * its own, so that somebody who drags one of them at the same time keeps that.
 *
 * @returns `nothing` when a part would leave the site plane
 */
export function moveHole(edit: EditNamed<'move hole'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  return typeof open === 'string' ? open : (shiftedHole(open, reading, edit.by) ?? 'nothing');
}

const PLACED = /^(?:green|waypoints|tee:.*|turn:.*)$/;

/** The writes that shift everything of a hole that lies somewhere; `undefined` when a part would leave the site plane. */
export function shiftedHole(open: OpenHole, reading: Reading, by: SitePoint): readonly Write[] | undefined {
  const parts = cellsOfHole(reading, open.routing.id, open.hole.id);
  const writes: Write[] = [];
  for (const part of parts.keys()) {
    const value = PLACED.test(part) ? shiftedPart(parts, part, by) : null;
    if (value === undefined) return undefined;
    if (value !== null) writes.push(open.write(part, value));
  }
  return writes;
}
