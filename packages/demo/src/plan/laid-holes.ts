import type { Place } from './place.ts';

/** A hole as it was laid out by hand. Forward tees that are missing are left for the analysis to propose. */
export interface LaidHole {
  readonly id: string;
  readonly name: string;
  readonly back: Place;
  readonly middle?: Place;
  readonly forward?: Place;
  readonly turns: readonly Place[];
  readonly green: Place;
  /** Length along the last leg and width across it, in metres. */
  readonly oval: readonly [length: number, width: number];
  /** Fixed where the card says so; the others take their par from the length. */
  readonly par?: 3 | 4 | 5;
  readonly verdict?: 'keeper' | 'sound' | 'weak';
  readonly reason?: string;
  readonly note?: string;
  /** Bends of the walk to the next tee. */
  readonly walkBy?: readonly Place[];
}

/** Out along the road, down the farm side to the shore, and home over the creek: par 36. */
export const WEST_NINE: readonly LaidHole[] = [
  {
    id: 'ling',
    name: 'Ling',
    back: [560, 655],
    middle: [533, 654],
    forward: [498, 657],
    turns: [[325, 684]],
    green: [102, 642],
    oval: [30, 24],
    par: 5,
  },
  {
    id: 'farm-bank',
    name: 'Farm Bank',
    back: [80, 598],
    middle: [74, 574],
    turns: [[84, 380]],
    green: [132, 255],
    oval: [28, 22],
  },
  {
    id: 'sluice',
    name: 'Sluice',
    back: [100, 220],
    middle: [103, 205],
    forward: [91, 187],
    turns: [],
    green: [75, 72],
    oval: [26, 20],
  },
  {
    id: 'gorse',
    name: 'Gorse',
    back: [130, 44],
    middle: [148, 69],
    turns: [[216, 268]],
    green: [188, 405],
    oval: [27, 23],
  },
  {
    id: 'curlew',
    name: 'Curlew',
    back: [150, 445],
    middle: [174, 455],
    turns: [[362, 488]],
    green: [512, 462],
    oval: [30, 20],
  },
  {
    id: 'long-saltings',
    name: 'Long Saltings',
    back: [512, 408],
    middle: [489, 397],
    par: 5,
    turns: [[328, 258]],
    green: [300, 40],
    oval: [32, 22],
    verdict: 'keeper',
    reason: 'the line turns where the whole shore opens',
  },
  {
    id: 'creek',
    name: 'Creek',
    back: [345, 50],
    middle: [364, 62],
    forward: [402, 60],
    turns: [[560, 112]],
    green: [682, 66],
    oval: [26, 24],
    verdict: 'keeper',
    reason: 'green over the creek, as the land offers it',
  },
  {
    id: 'ferry',
    name: 'Ferry',
    back: [718, 104],
    middle: [712, 112],
    forward: [701, 119],
    turns: [],
    green: [622, 226],
    oval: [30, 19],
    verdict: 'sound',
  },
  {
    id: 'beacon',
    name: 'Beacon',
    back: [572, 214],
    middle: [570, 246],
    forward: [586, 287],
    turns: [],
    green: [606, 558],
    oval: [29, 25],
    verdict: 'keeper',
    reason: 'plays home with the sea-mark behind',
  },
];

/** Out to the cottages, along the shore and back through the alders: par 35. */
export const EAST_NINE: readonly LaidHole[] = [
  {
    id: 'juniper',
    name: 'Juniper',
    back: [640, 598],
    middle: [665, 612],
    forward: [700, 632],
    turns: [[872, 684]],
    green: [1026, 650],
    oval: [29, 24],
  },
  {
    id: 'stile',
    name: 'Stile',
    back: [1076, 644],
    forward: [1083, 617],
    turns: [],
    green: [1094, 494],
    oval: [25, 21],
    verdict: 'weak',
    reason: 'the path runs before the tee',
  },
  {
    id: 'marram',
    name: 'Marram',
    back: [1142, 498],
    middle: [1149, 472],
    par: 5,
    turns: [[1150, 258]],
    green: [1094, 56],
    oval: [33, 24],
  },
  {
    id: 'samphire',
    name: 'Samphire',
    back: [1054, 22],
    forward: [1002, 23],
    turns: [[830, 52]],
    green: [776, 122],
    oval: [28, 22],
    walkBy: [
      [796, 172],
      [768, 216],
      [728, 216],
    ],
    par: 4,
    note: 'The walk to the next tee keeps out of the mere and its margin.',
  },
  {
    id: 'alder',
    name: 'Alder',
    back: [684, 192],
    middle: [684, 215],
    turns: [[638, 382]],
    green: [645, 526],
    oval: [27, 24],
    verdict: 'weak',
    reason: 'squeezed between the wood and the ninth',
  },
  {
    id: 'plover',
    name: 'Plover',
    back: [716, 508],
    turns: [],
    green: [884, 490],
    oval: [24, 24],
    verdict: 'sound',
  },
  {
    id: 'heron',
    name: 'Heron',
    back: [942, 452],
    middle: [943, 427],
    turns: [],
    green: [874, 128],
    oval: [26, 23],
  },
  {
    id: 'sedge',
    name: 'Sedge',
    back: [914, 98],
    middle: [938, 112],
    turns: [],
    green: [1052, 246],
    oval: [34, 24],
  },
  {
    id: 'home',
    name: 'Home',
    back: [1040, 294],
    middle: [1024, 322],
    forward: [1021, 370],
    turns: [[962, 526]],
    green: [722, 585],
    oval: [35, 26],
    par: 5,
    verdict: 'keeper',
    reason: 'a cape across the east heath',
  },
];

/** Kept beside the round: a short hole on the heath between 6 and 9. */
export const SPARE_HOLES: readonly LaidHole[] = [
  { id: 'whin', name: 'Whin', back: [540, 300], turns: [], green: [425, 205], oval: [25, 21] },
];
