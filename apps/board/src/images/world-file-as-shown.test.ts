import type { WorldFile } from '@loopwright/formats/image';
import { expect, test } from 'vitest';
import { asShown } from './world-file-as-shown.ts';

// 4 columns and 3 rows are stored; pixels of 1 m, the centre of the first at (100, 200), north up.
const STORED: WorldFile = { a: 1, d: 0, b: 0, e: -1, c: 100, f: 200 };
const placeOf = ({ a, b, c, d, e, f }: WorldFile, [column, row]: readonly [number, number]) => [
  a * column + b * row + c,
  d * column + e * row + f,
];

// Exif 2.32, tag 0x0112: on which side row 0 and column 0 of what is stored are seen. The stored pixel (0, 0) is where
// those two sides meet, (3, 0) at the other end of row 0's side.
test.each([
  [1, 4, 3, [0, 0], [3, 0]],
  [2, 4, 3, [3, 0], [0, 0]],
  [3, 4, 3, [3, 2], [0, 2]],
  [4, 4, 3, [0, 2], [3, 2]],
  [5, 3, 4, [0, 0], [0, 3]],
  [6, 3, 4, [2, 0], [2, 3]],
  [7, 3, 4, [2, 3], [2, 0]],
  [8, 3, 4, [0, 3], [0, 0]],
] as const)(
  'orientation %i: the stored corners lie where the world file says, wherever they are shown',
  (orientation, widthPixels, heightPixels, first, second) => {
    const shown = asShown(STORED, { widthPixels, heightPixels }, orientation);
    expect(placeOf(shown, first)).toEqual([100, 200]);
    expect(placeOf(shown, second)).toEqual([103, 200]);
  },
);
