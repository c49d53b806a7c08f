import type { WorldFile } from '@loopwright/formats/image';
import type { Pixels } from './placement.ts';

/** A stored pixel's column or row from the shown one: start + byColumn · column + byRow · row, pixels counted by their centres from 0. */
type Count = readonly [start: number, byColumn: number, byRow: number];

/**
 * The terms of a world file for the picture as it is shown. A world file counts the pixels as they are stored; a camera's
 * orientation may have them shown turned or as in a mirror.
 *
 * @param shown  the size as it is shown
 * @param orientation  1 to 8
 *
 * Source: Exif 2.32, tag 0x0112: where row 0 and column 0 of the stored pixels are seen.
 */
export function asShown(terms: WorldFile, { widthPixels, heightPixels }: Pixels, orientation: number): WorldFile {
  const [along, down] = storedFrom(orientation, widthPixels - 1, heightPixels - 1);
  const { a, b, c, d, e, f } = terms;
  return {
    a: a * along[1] + b * down[1],
    b: a * along[2] + b * down[2],
    c: a * along[0] + b * down[0] + c,
    d: d * along[1] + e * down[1],
    e: d * along[2] + e * down[2],
    f: d * along[0] + e * down[0] + f,
  };
}

function storedFrom(orientation: number, lastColumn: number, lastRow: number): readonly [along: Count, down: Count] {
  const [column, row]: readonly [Count, Count] = [
    [0, 1, 0],
    [0, 0, 1],
  ];
  const [columnBack, rowBack]: readonly [Count, Count] = [
    [lastColumn, -1, 0],
    [lastRow, 0, -1],
  ];
  switch (orientation) {
    case 2:
      return [columnBack, row];
    case 3:
      return [columnBack, rowBack];
    case 4:
      return [column, rowBack];
    case 5:
      return [row, column];
    case 6:
      return [row, columnBack];
    case 7:
      return [rowBack, columnBack];
    case 8:
      return [rowBack, column];
    default:
      return [column, row];
  }
}
