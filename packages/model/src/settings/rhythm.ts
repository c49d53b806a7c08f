import { ROUND_SETTINGS } from './round.ts';
import type { SettingDefinition } from './setting.ts';
import { tiers } from './tiers.ts';

const COURSE = { group: 'rhythm', least: 0, status: 'calibrated' } as const;
const PRACTICE = {
  group: 'rhythm',
  least: 0,
  status: 'common practice',
  source: 'common practice, no source',
} as const;
const SEQUENCE = 'C. Johnston, Routing considerations (clydejohnston.com)';

/** How one hole follows another. Nothing here can hurt anybody, and none of it is ever a stop. */
export const RHYTHM_SETTINGS = {
  ...tiers(
    'par-run',
    { look: [5, '3'], mention: [4, '23'] },
    {
      ...COURSE,
      label: 'Holes of one par in a row, this many or more',
      unit: 'count',
      most: 18,
      source: 'calibrated on 31 mapped courses',
    },
  ),
  ...tiers(
    'par-threes-in-a-row',
    { look: [2], mention: [1] },
    {
      ...COURSE,
      label: 'Times two par 3s follow each other in a round, this many or more',
      unit: 'count',
      most: 9,
      source: 'calibrated on 31 mapped courses: one has it twice, four have it at all; 4.9 % of 144 cards have it',
    },
  ),
  ...tiers(
    'par-fives-in-a-row',
    { look: [2], mention: [1] },
    {
      ...COURSE,
      label: 'Times two par 5s follow each other in a round, this many or more',
      unit: 'count',
      most: 9,
      source: 'calibrated on 31 mapped courses: none has it twice, two have it at all; 16 % of 144 cards have it',
    },
  ),
  'par-three-late-look': {
    ...COURSE,
    label: 'First par 3 after hole',
    default: 6,
    unit: 'count',
    most: 18,
    source: 'calibrated on 31 mapped courses: the first par 3 is usually the 4th hole, nowhere after the 6th',
  },
  'par-three-late-mention': {
    ...COURSE,
    label: 'First par 3 at hole, or later',
    default: 6,
    unit: 'count',
    most: 18,
    source: 'calibrated on 31 mapped courses: one has its first par 3 at the 6th',
  },
  'par-three-early-mention': {
    ...COURSE,
    label: 'First par 3 at hole, or earlier',
    default: 1,
    unit: 'count',
    most: 18,
    source: 'calibrated on 31 mapped courses: none starts with a par 3; 5 % of 144 cards do',
  },
  'par-three-last-mention': {
    ...COURSE,
    label: 'A par 3 this near to the end of a round (1: the last hole)',
    default: 1,
    unit: 'count',
    most: 3,
    source: '8 % of 144 cards finish with a par 3',
  },
  'opening-holes': {
    ...PRACTICE,
    label: 'Opening holes of a round',
    default: 4,
    unit: 'count',
    most: 9,
    source: `${SEQUENCE}: no long par 3 and no reachable par 5 in the first four holes`,
    status: 'published',
  },
  'long-par-three-mention': {
    ...PRACTICE,
    label: 'Long par 3 in the opening holes: more than',
    default: 150.876,
    unit: 'm',
    most: 300,
    source: `${SEQUENCE}: if it cannot be avoided, 160 to 165 yd at most`,
    status: 'published',
  },
  'reachable-par-five-mention': {
    ...PRACTICE,
    label: 'Reachable par 5 in the opening holes: up to',
    default: 457.2,
    unit: 'm',
    most: 700,
    source: `${SEQUENCE}: 500 yd`,
    status: 'published',
  },
  'short-holes-apart': {
    ...PRACTICE,
    label: 'Short holes are close together with no more than this many holes between',
    default: 1,
    unit: 'count',
    most: 4,
  },
  'short-hole': {
    ...PRACTICE,
    label: 'A hole is short, whatever its par, up to',
    default: 250,
    unit: 'm',
    most: 400,
    source: "common practice, no source: about where a scratch man's tee shot ends",
  },
  'same-club-par-threes-mention': {
    ...PRACTICE,
    label: 'Par 3s of a round that take the same club, this many or more',
    default: 3,
    unit: 'count',
    most: 9,
  },
  'same-approach-mention': {
    ...PRACTICE,
    label: 'Approaches in a row with the same club, this many or more',
    default: 3,
    unit: 'count',
    most: 18,
  },
  ...tiers(
    'bends-one-way',
    { look: [0.9, '0'], mention: [0.75, '10'] },
    {
      ...COURSE,
      label: 'Share of bends to one side, more than',
      unit: 'share',
      most: 1,
      source: 'calibrated on 31 mapped courses',
    },
  ),
  'bend-angle': {
    ...COURSE,
    label: 'A hole bends when its line turns by more than',
    default: 15,
    unit: 'deg',
    most: 60,
    source: 'calibrated on 31 mapped courses: 62 % of par 4s and 5s bend by more',
  },
  'bends-least': {
    ...COURSE,
    label: 'Bends are weighed in rounds with at least this many',
    default: 6,
    unit: 'count',
    most: 18,
    source: 'the measure the share of bends was calibrated with',
    status: 'definition',
  },
  ...ROUND_SETTINGS,
} as const satisfies Record<string, SettingDefinition>;
