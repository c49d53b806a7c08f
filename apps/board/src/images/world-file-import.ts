import type { NamedEdit } from '@loopwright/document';
import { MAP_UNITS, type MapUnit, METRES_PER_MAP_UNIT, placementOf, type WorldFile } from '@loopwright/formats/image';
import type { ImageLayer, LengthUnit, Site } from '@loopwright/model';
import { lengthWords } from '../reading/lengths.ts';
import type { Pixels, Placement } from './placement.ts';

/** A unit a world file may be meant in, and how wide the picture would be. */
export interface UnitChoice {
  readonly unit: MapUnit;
  readonly words: string;
}

const UNIT_WORDS: Readonly<Record<MapUnit, string>> = {
  metres: 'Metres',
  'US survey feet': 'US survey feet',
  'international feet': 'International feet',
};

/** The units to choose from, each with the width it would give: the file does not say, and nobody guesses. */
export function unitChoices({ a, d }: WorldFile, { widthPixels }: Pixels, units: LengthUnit): readonly UnitChoice[] {
  const width = Math.sqrt(a * a + d * d) * widthPixels;
  return MAP_UNITS.map((unit) => ({
    unit,
    words: `${UNIT_WORDS[unit]} (${lengthWords(width * METRES_PER_MAP_UNIT[unit], units)} wide)`,
  }));
}

export type LaidByWorldFile =
  | { readonly kind: 'laid'; readonly placement: Placement; readonly grid: NamedEdit | undefined }
  | { readonly kind: 'not laid'; readonly why: string };

/** Where a world file lays a picture: beside what the site's grid has placed already; the first one brings the grid. */
export function layByWorldFile(terms: WorldFile, pixels: Pixels, unit: MapUnit, site: Site): LaidByWorldFile {
  const { grid, location } = site;
  const known = grid ?? location?.origin;
  const placed = placementOf(terms, pixels, {
    unit,
    ...(known ? { grid: known } : {}),
    ...(location ? { scaleFactor: location.scaleFactor } : {}),
  });
  if (placed.kind === 'too far') return { kind: 'not laid', why: placed.why };
  return {
    kind: 'laid',
    placement: placed.placement,
    grid: grid ? undefined : { edit: 'set grid', grid: placed.grid },
  };
}

/** An edit and the grid it brings, as one step. */
export function withGrid(edit: NamedEdit, grid: NamedEdit | undefined, name: string): NamedEdit {
  return grid ? { edit: 'several', does: `lay ${name} by its world file`, edits: [grid, edit] } : edit;
}

/** The image a world file that came alone is for: the one picked out, the one of its name, or the only one. */
export function imageForWorldFile(
  images: readonly ImageLayer[],
  chosen: ImageLayer['id'] | undefined,
  name: string,
): ImageLayer | undefined {
  const named = images.filter((image) => image.name?.toLowerCase() === name.toLowerCase());
  return images.find(({ id }) => id === chosen) ?? named[0] ?? (images.length === 1 ? images[0] : undefined);
}
