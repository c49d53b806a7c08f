import { BOUNDARY, LAID_FEATURES } from '../plan/laid-land.ts';
import type { Place } from '../plan/place.ts';
import { type Cover, emptyCover, fillOutline } from './cover.ts';

/** Kinds of ground in the picture. */
export const GROUND = { fields: 0, heath: 1, saltmarsh: 2, water: 3, wetland: 4, wood: 5, mown: 6 } as const;

/** Between the shore and the boundary, and a little way into the site. */
const SALTMARSH: readonly Place[] = [
  [-80, -40],
  [1300, -60],
  [1300, 20],
  [1180, 34],
  [1090, 2],
  [960, 0],
  [824, 24],
  [724, 62],
  [690, 100],
  [646, 104],
  [616, 58],
  [560, 44],
  [470, 36],
  [330, 14],
  [250, 22],
  [140, 20],
  [40, 34],
  [-80, 60],
];

/** The ground under each pixel. */
export function landCover(): Cover {
  const cover = emptyCover();
  fillOutline(cover, BOUNDARY, GROUND.heath);
  fillOutline(cover, SALTMARSH, GROUND.saltmarsh);
  for (const { kind, area } of LAID_FEATURES) {
    if (!area) continue;
    if (kind === 'water') fillOutline(cover, area, GROUND.water);
    if (kind === 'wetland') fillOutline(cover, area, GROUND.wetland);
    if (kind === 'trees') fillOutline(cover, area, GROUND.wood);
    if (kind === 'range') fillOutline(cover, area, GROUND.mown);
  }
  return cover;
}
