import type { SiteMark } from '@loopwright/model';
import type { Place } from './place.ts';

/** An outline or line of the invented land, in metres from its south-west corner. */
type Outline = readonly Place[];

/** Counter-clockwise: shore, cottages, road, farm. */
export const BOUNDARY: Outline = [
  [60, 18],
  [150, 2],
  [262, 4],
  [330, -8],
  [470, 16],
  [600, 30],
  [640, 12],
  [668, 14],
  [705, 36],
  [820, 2],
  [960, -16],
  [1096, -10],
  [1170, 22],
  [1208, 150],
  [1214, 330],
  [1206, 500],
  [1150, 590],
  [1158, 752],
  [900, 764],
  [640, 756],
  [380, 762],
  [150, 740],
  [18, 690],
  [24, 420],
  [40, 200],
  [63, 132],
];

export const APRON: Place = [606, 648];

/** Clubhouse, putting green, cars. */
export const FOOTPRINTS: readonly Outline[] = [
  [
    [592, 664],
    [622, 662],
    [624, 684],
    [594, 686],
  ],
  [
    [628, 640],
    [648, 640],
    [650, 656],
    [630, 658],
  ],
  [
    [640, 684],
    [700, 690],
    [698, 728],
    [638, 722],
  ],
];

export interface LaidFeature {
  readonly id: string;
  readonly kind:
    | 'water'
    | 'wetland'
    | 'trees'
    | 'easement'
    | 'public road'
    | 'public path'
    | 'neighbour'
    | 'range'
    | 'landmark'
    | 'ground unit'
    | 'flood line'
    | 'course path';
  readonly name: string;
  readonly area?: Outline;
  readonly line?: Outline;
  readonly point?: Place;
  readonly buffer?: number;
  readonly height?: number;
  readonly authority?: string;
  readonly note?: string;
}

export const LAID_FEATURES: readonly LaidFeature[] = [
  {
    id: 'saltmarsh-water',
    kind: 'water',
    name: 'Ferrow estuary',
    area: [
      [-60, -220],
      [1260, -220],
      [1260, -20],
      [1100, -32],
      [960, -38],
      [830, -20],
      [706, 16],
      [664, -8],
      [640, -8],
      [600, 8],
      [470, -6],
      [330, -30],
      [262, -18],
      [150, -20],
      [40, -4],
      [-60, 20],
    ],
  },
  {
    id: 'tidal-creek',
    kind: 'water',
    name: 'Sluice Creek',
    area: [
      [640, -8],
      [664, -8],
      [662, 18],
      [652, 42],
      [656, 78],
      [676, 104],
      [694, 128],
      [712, 146],
      [706, 158],
      [684, 146],
      [664, 122],
      [640, 92],
      [632, 54],
      [642, 20],
    ],
  },
  {
    id: 'rush-mere',
    kind: 'wetland',
    name: 'Rush Mere',
    area: [
      [706, 158],
      [712, 146],
      [738, 140],
      [764, 150],
      [776, 172],
      [764, 192],
      [738, 198],
      [716, 188],
    ],
    buffer: 15,
    authority: 'to be settled with the site ecologist',
  },
  {
    id: 'alder-wood',
    kind: 'trees',
    name: 'alder wood',
    area: [
      [726, 250],
      [772, 232],
      [822, 246],
      [848, 300],
      [846, 370],
      [826, 428],
      [778, 446],
      [738, 424],
      [722, 360],
      [716, 300],
    ],
    height: 14,
  },
  {
    id: 'pine-belt',
    kind: 'trees',
    name: 'pine belt',
    area: [
      [210, 560],
      [262, 572],
      [268, 598],
      [214, 600],
      [172, 576],
      [178, 556],
    ],
    height: 16,
  },
  {
    id: 'thorn-brake',
    kind: 'trees',
    name: 'thorn brake',
    area: [
      [404, 176],
      [440, 188],
      [476, 180],
      [490, 156],
      [466, 134],
      [424, 130],
      [402, 148],
    ],
    height: 5,
  },
  {
    id: 'shore-road',
    kind: 'public road',
    name: 'Shore Road',
    line: [
      [-60, 716],
      [18, 726],
      [150, 762],
      [380, 786],
      [640, 780],
      [900, 788],
      [1160, 776],
      [1260, 768],
    ],
  },
  {
    id: 'stile-path',
    kind: 'public path',
    name: 'Cottage path',
    line: [
      [1050, 782],
      [1057, 700],
      [1058, 624],
      [1094, 596],
      [1150, 590],
      [1220, 574],
    ],
  },
  {
    id: 'sallow-farm',
    kind: 'neighbour',
    name: 'Sallow Farm',
    area: [
      [-34, 60],
      [0, 56],
      [4, 90],
      [-30, 96],
    ],
  },
  {
    id: 'coast-cottages',
    kind: 'neighbour',
    name: 'Saltpan Cottages',
    area: [
      [1226, 400],
      [1246, 400],
      [1250, 500],
      [1228, 502],
    ],
  },
  {
    id: 'water-main',
    kind: 'easement',
    name: 'buried main',
    line: [
      [440, 764],
      [448, 600],
      [420, 400],
      [380, 130],
      [372, 0],
    ],
    buffer: 3,
    authority: 'owner of the main',
  },
  {
    id: 'range',
    kind: 'range',
    name: 'practice range',
    area: [
      [548, 560],
      [548, 602],
      [318, 632],
      [318, 532],
    ],
  },
  { id: 'sea-mark', kind: 'landmark', name: 'old sea-mark', point: [640, -120], height: 24 },
  {
    id: 'drive',
    kind: 'course path',
    name: 'club drive',
    line: [
      [720, 782],
      [704, 740],
      [690, 728],
    ],
  },
];

/** Found on foot before any hole was drawn; one good green site is not taken up yet. */
export const LAID_MARKS: readonly (Omit<SiteMark, 'at'> & { readonly place: Place })[] = [
  { id: 'shelf', kind: 'green site', place: [684, 64], verdict: 'natural', note: 'a shelf beyond the creek' },
  { id: 'hollow', kind: 'green site', place: [300, 38], verdict: 'natural', note: 'open to the whole shore' },
  { id: 'saddle', kind: 'green site', place: [248, 150], verdict: 'natural', note: 'a saddle nobody plays to yet' },
  { id: 'bank', kind: 'tee site', place: [1142, 500], verdict: 'needs work', note: 'falls away to the cottages' },
  { id: 'plateau', kind: 'landing ground', place: [328, 258], verdict: 'natural' },
];
