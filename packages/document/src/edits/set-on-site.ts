import {
  LIMITS,
  parseBoundary,
  parseGrid,
  parseLengthUnit,
  parseLines,
  parseName,
  parseNumber,
} from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';

export type SiteFrameEdit = EditNamed<
  'name site' | 'note site' | 'set units' | 'set north' | 'set grid' | 'draw boundary'
>;

/**
 * Decides something about the site as a whole: its name, note, units, north, survey grid or boundary. An empty name or
 * note takes it away, as does no boundary.
 *
 * @returns `nothing` when it is so already, or cannot be read: a boundary without an outline, of more points than an
 *   outline may have, a north beyond a full turn
 */
export function setOnSite(edit: SiteFrameEdit, reading: Reading): EditWrites {
  const { part, value, now } = decided(edit, reading);
  if (value === undefined || (value === null && now === undefined)) return 'nothing';
  return [{ root: 'site', group: '', part, value }];
}

interface Decided {
  readonly part: string;
  /** `null` takes it away; `undefined` when it cannot be read. */
  readonly value: unknown;
  readonly now: unknown;
}

function decided(edit: SiteFrameEdit, { plan: { site } }: Reading): Decided {
  switch (edit.edit) {
    case 'name site':
      return { part: 'name', value: parseName(edit.name, LIMITS.name) ?? null, now: site.name };
    case 'note site':
      return { part: 'note', value: parseLines(edit.note, LIMITS.note) || null, now: site.note };
    case 'set units':
      return { part: 'units', value: parseLengthUnit(edit.units), now: site.units };
    case 'set north':
      return { part: 'north', value: parseNumber(edit.north, -7, 7), now: site.north };
    case 'set grid':
      return { part: 'grid', value: parseGrid(edit.grid), now: site.grid };
    case 'draw boundary':
      return {
        part: 'boundary',
        value: edit.boundary === null ? null : parseBoundary(edit.boundary),
        now: site.boundary,
      };
  }
}
