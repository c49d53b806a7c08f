import type { SitePoint } from '@loopwright/model';
import type { Tags } from '../geojson/element.ts';
import type { MappedNumber } from './hole-number.ts';

/** A mapped hole while it is being taken in: its line on the site plane, tee first. */
export interface HoleInHand {
  readonly tags: Tags;
  readonly line: readonly SitePoint[];
  readonly mapped: MappedNumber | undefined;
}

/** How notes call it. */
export function nameOf(hole: HoleInHand): string {
  if (hole.mapped?.from === 'ref' && hole.tags.ref) return `Hole ${hole.tags.ref}`;
  if (hole.mapped) return `Hole ${hole.mapped.number}`;
  return hole.tags.name ? `Hole '${hole.tags.name}'` : 'A hole without a number';
}

export function teeOf(hole: HoleInHand): SitePoint {
  const tee = hole.line[0];
  if (!tee) throw new RangeError('teeOf: a hole in hand has a line of at least two points');
  return tee;
}

export function endOf(hole: HoleInHand): SitePoint {
  const end = hole.line.at(-1);
  if (!end) throw new RangeError('endOf: a hole in hand has a line of at least two points');
  return end;
}
