import type { ImageLayer, Plan, Routing } from '@loopwright/model';
import { IMAGE_FRAME, PLACEMENT } from '../image/image-frame.ts';
import { demoHoles, EAST_LOOP, WEST_LOOP } from './demo-holes.ts';
import { BASE_ID, demoSite } from './demo-site.ts';
import { EAST_NINE, SPARE_HOLES, WEST_NINE } from './laid-holes.ts';
import { TEE_SETS } from './tee-sets.ts';

/**
 * The demo: an invented stretch of heath on an estuary, with a first routing of eighteen holes and one spare.
 *
 * Most of it is laid as an architect would; the faults in it are listed in this package's README.
 *
 * @param imageBlob  SHA-256 (hex) under which the caller has stored the encoded `demoImage()`; without it the plan has
 *   no picture
 */
export function demoPlan(imageBlob?: string): Plan {
  return {
    loopwright: 1,
    site: demoSite(imageBlob === undefined ? [] : [imageLayer(imageBlob)]),
    teeSets: TEE_SETS,
    routings: [routingA()],
    settings: {},
    dispositions: [],
  };
}

function routingA(): Routing {
  return {
    id: 'a',
    name: 'A',
    locked: false,
    loops: [
      { id: WEST_LOOP, name: 'West nine', base: BASE_ID, holes: WEST_NINE.map(({ id }) => id) },
      { id: EAST_LOOP, name: 'East nine', base: BASE_ID, holes: EAST_NINE.map(({ id }) => id) },
    ],
    rounds: [{ id: 'round', name: 'West + East', loops: [WEST_LOOP, EAST_LOOP] }],
    holes: demoHoles(),
    spare: SPARE_HOLES.map(({ id }) => id),
  };
}

function imageLayer(blob: string): ImageLayer {
  return {
    id: 'site-image',
    blob,
    widthPixels: IMAGE_FRAME.width,
    heightPixels: IMAGE_FRAME.height,
    placement: PLACEMENT,
    opacity: 1,
  };
}
