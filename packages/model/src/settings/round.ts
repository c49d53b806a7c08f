import type { SettingDefinition } from './setting.ts';
import { tiers } from './tiers.ts';

const COURSE = { group: 'rhythm', least: 0, status: 'calibrated' } as const;
const PRACTICE = {
  group: 'rhythm',
  least: 0,
  status: 'common practice',
  source: 'common practice, no source',
} as const;

/** The round as a whole: its par 3s, its loops, its pace, the designer's own view of its holes. */
export const ROUND_SETTINGS = {
  ...tiers(
    'par-three-range',
    { look: [30, '6'], mention: [40, '23'] },
    {
      ...COURSE,
      label: 'Shortest and longest par 3 differ by less than',
      unit: 'm',
      most: 200,
      source: 'calibrated on 31 mapped courses',
    },
  ),
  'par-three-usual': {
    ...COURSE,
    label: 'Usual length of a par 3',
    default: 165,
    unit: 'm',
    most: 300,
    source: 'the middle one of the par 3s on 117 cards',
  },
  'par-three-hidden-mention': {
    ...PRACTICE,
    label: 'Length that the par 3s add to, or take from, the card beyond',
    default: 150,
    unit: 'm',
    most: 1000,
  },
  ...tiers(
    'loop-par-apart',
    { look: [2, '3'], mention: [1, '8'] },
    {
      ...COURSE,
      label: 'Par of the loops of a round differs by more than',
      unit: 'count',
      most: 18,
      source: 'aggregated from 144 cards',
    },
  ),
  ...tiers(
    'loop-length-apart',
    { look: [450], mention: [250] },
    { ...PRACTICE, label: 'Length of the loops of a round differs by more than', unit: 'm', most: 3000 },
  ),
  ...tiers(
    'last-to-first',
    { look: [400, '0'], mention: [200, '16'] },
    {
      ...COURSE,
      label: 'Last green to first tee, straight, more than',
      unit: 'm',
      most: 5000,
      source: 'calibrated on 31 mapped courses',
    },
  ),
  'loop-to-first-mention': {
    ...COURSE,
    label: "End of an earlier loop to the round's first tee, straight, more than",
    default: 250,
    unit: 'm',
    most: 5000,
    source: 'calibrated on 31 mapped courses: ten are beyond',
  },
  'start-interval': {
    ...COURSE,
    label: 'Starting interval',
    default: 10,
    unit: 'min',
    most: 30,
    source: 'R&A Pace of Play Manual (2016): 8 min for two-balls, 10 for three-balls, 12 for four-balls',
    status: 'published',
  },
  'par-three-time': {
    ...COURSE,
    label: 'Time a group holds a par 3',
    default: 9,
    unit: 'min',
    most: 30,
    source: 'R&A Pace of Play Manual, worked example of section 2.2: the third hole takes 9 min',
    status: 'published',
  },
  'drivable-time': {
    ...PRACTICE,
    label: 'Time a group holds a par 4 whose green is within reach of the tee',
    default: 12,
    unit: 'min',
    most: 30,
    source: "common practice, no source: the time the R&A's worked example gives a par 4, its green being waited for",
  },
  'queue-early-holes': {
    ...COURSE,
    label: 'A queue at the start is looked for in the first',
    default: 5,
    unit: 'count',
    most: 9,
    source: 'USGA Pace Rating System (D. Knuth): above all when a par 3 comes among the first five holes',
    status: 'published',
  },
  'queue-group': {
    ...PRACTICE,
    label: 'The wait is worked out for group number',
    default: 10,
    unit: 'count',
    most: 30,
  },
  'queue-wait-mention': {
    ...PRACTICE,
    label: 'Wait of that group on the tee more than',
    default: 5,
    unit: 'min',
    most: 60,
  },
  'weak-together-mention': {
    ...PRACTICE,
    label: 'Weak holes in a row, this many or more',
    default: 2,
    unit: 'count',
    most: 9,
  },
  'weak-place-mention': {
    ...PRACTICE,
    label: 'A weak hole among so many at the start or finish of a loop',
    default: 1,
    unit: 'count',
    most: 4,
    source: 'common practice, no source: a round is remembered by its first and last holes',
  },
  'keepers-mention': {
    ...PRACTICE,
    label: 'Keepers in a loop, fewer than, once its holes are judged',
    default: 1,
    unit: 'count',
    most: 9,
  },
  'mark-taken-up': {
    ...PRACTICE,
    label: 'A site mark is taken up by a part of a hole that lies within',
    default: 30,
    unit: 'm',
    most: 200,
  },
} as const satisfies Record<string, SettingDefinition>;
