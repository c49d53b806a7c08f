import type { SettingDefinition } from './setting.ts';
import { tiers } from './tiers.ts';

const COURSE = { group: 'direction', least: 0, status: 'calibrated' } as const;

/** Which way the holes run. Nothing here can hurt anybody, and none of it is ever a stop. */
export const DIRECTION_SETTINGS = {
  'directions-used-look': {
    ...COURSE,
    label: 'Playing directions used, of eight, at most (look)',
    default: 4,
    unit: 'count',
    most: 8,
    source: 'calibrated on 31 mapped courses: the middle course uses 7; one uses 4 or fewer',
  },
  'directions-used-mention': {
    ...COURSE,
    label: 'Playing directions used, of eight, at most (mention)',
    default: 5,
    unit: 'count',
    most: 8,
    source: 'calibrated on 31 mapped courses: the middle course uses 7; four use 5 or fewer',
  },
  'directions-used-holes': {
    ...COURSE,
    label: 'Playing directions are counted on rounds of at least this many holes',
    default: 18,
    unit: 'count',
    most: 36,
    source: 'the measure was calibrated on 18 holes; fewer holes have fewer directions',
    status: 'definition',
  },
  'three-one-way-angle': {
    ...COURSE,
    label: 'Three holes in a row run one way when within',
    default: 45,
    unit: 'deg',
    most: 90,
    source: 'common practice, no source',
    status: 'common practice',
  },
  ...tiers(
    'runs-one-way',
    { look: [2], mention: [1] },
    {
      ...COURSE,
      label: 'Runs of three holes one way, this many or more',
      unit: 'count',
      most: 18,
      source: 'calibrated on 31 mapped courses: three have two or more, ten have any',
    },
  ),
  'runs-one-way-angle': {
    ...COURSE,
    label: 'A run of three counts when within',
    default: 30,
    unit: 'deg',
    most: 90,
    source: 'the measure the number of runs was calibrated with',
    status: 'definition',
  },
  ...tiers(
    'next-one-way',
    { look: [5], mention: [3] },
    {
      ...COURSE,
      label: 'Consecutive holes running one way, more than',
      unit: 'count',
      most: 18,
      source: 'calibrated on 31 mapped courses: one has more than five such pairs, ten more than three',
    },
  ),
  'next-one-way-angle': {
    ...COURSE,
    label: 'Consecutive holes run one way when within',
    default: 20,
    unit: 'deg',
    most: 90,
    source: 'the measure the number of pairs was calibrated with',
    status: 'definition',
  },
  'side-by-side-apart': {
    ...COURSE,
    label: 'Three holes lie side by side when each is nearer to the next than',
    default: 100,
    unit: 'm',
    most: 300,
    source: 'calibrated on 31 mapped courses: two have three holes side by side played the same way',
  },
  ...tiers(
    'par-threes-one-way',
    { look: [4], mention: [2] },
    {
      ...COURSE,
      label: 'Pairs of par 3s running one way, this many or more',
      unit: 'count',
      most: 18,
      source: 'calibrated on 31 mapped courses: two have four pairs or more, five have two or more',
    },
  ),
  'par-threes-one-way-angle': {
    ...COURSE,
    label: 'Par 3s run one way when within',
    default: 20,
    unit: 'deg',
    most: 90,
    source: 'the measure the number of pairs was calibrated with',
    status: 'definition',
  },
  'par-threes-alike': {
    ...COURSE,
    label: 'Par 3s are alike when their lengths differ by less than',
    default: 8,
    unit: 'm',
    most: 50,
    source:
      'common practice, no source: less than one club. Two par 3s of one length alone are ordinary (24 of 31 courses)',
    status: 'common practice',
  },
  'par-threes-alike-angle': {
    ...COURSE,
    label: 'Par 3s are alike when, besides, their directions agree within',
    default: 30,
    unit: 'deg',
    most: 90,
    source: 'common practice, no source',
    status: 'common practice',
  },
} as const satisfies Record<string, SettingDefinition>;
