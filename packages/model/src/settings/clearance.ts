import { BOUNDARY_SETTINGS } from './boundary.ts';
import { FAN_SETTINGS } from './fans.ts';
import type { SettingDefinition } from './setting.ts';
import { tiers } from './tiers.ts';

const APART = {
  group: 'clearance',
  unit: 'm',
  least: 0,
  most: 300,
  status: 'calibrated',
  safety: true,
  source: 'calibrated on 31 mapped courses',
} as const;

const SPACING = {
  'lines-cross-stop': {
    group: 'clearance',
    label: 'Lines of play cross by more than',
    default: 0,
    unit: 'm',
    least: 0,
    most: 100,
    source: 'no two lines cross in 4,743 pairs of holes on 31 mapped courses',
    status: 'calibrated',
    safety: true,
  },
  ...tiers(
    'spacing',
    { stop: [40, '0.4'], look: [50, '5'], mention: [60, '16'] },
    { ...APART, label: 'Holes alongside: middle spacing of the lines of play under' },
  ),
  ...tiers(
    'spacing-next',
    { stop: [35, '1.3'], look: [45, '8'], mention: [60, '31'] },
    { ...APART, label: 'Consecutive holes alongside: middle spacing under' },
  ),
  'spacing-angle': {
    group: 'clearance',
    label: 'Holes lie alongside when their headings agree, or oppose, within',
    default: 25,
    unit: 'deg',
    least: 5,
    most: 60,
    source: 'the measure the spacing limits were calibrated with',
    status: 'definition',
  },
  'spacing-stretch': {
    group: 'clearance',
    label: 'Holes lie alongside when they do so for at least',
    default: 100,
    unit: 'm',
    least: 20,
    most: 400,
    source: 'the measure the spacing limits were calibrated with',
    status: 'definition',
  },
  'spacing-off-tee': {
    group: 'clearance',
    label: 'Spacing leaves out the first stretch off each tee',
    default: 60,
    unit: 'm',
    least: 0,
    most: 150,
    source: 'the measure the spacing limits were calibrated with',
    status: 'definition',
  },
  'spacing-opposed-extra': {
    group: 'clearance',
    label: 'Opposed play: added to the spacing for look and mention',
    default: 5,
    unit: 'm',
    least: 0,
    most: 50,
    source: 'common practice, no source: golfers walking towards each other play into each other',
    status: 'common practice',
    safety: true,
  },
} as const satisfies Record<string, SettingDefinition>;

const PLACES_APART = {
  ...tiers(
    'landing-tee',
    { stop: [40, '0.4'], look: [60, '5'], mention: [75, '14'] },
    { ...APART, label: "Landing area to another hole's tee under" },
  ),
  ...tiers(
    'landing-green',
    { stop: [40, '0'], look: [60, '1.1'], mention: [75, '5'] },
    { ...APART, label: "Landing area to another hole's green under" },
  ),
  ...tiers(
    'landing-landing',
    { stop: [45, '0.4'], look: [60, '3'], mention: [75, '11'] },
    { ...APART, label: 'Landing areas of two holes apart under' },
  ),
  ...tiers(
    'landing-line',
    { stop: [35, '0.4'], look: [46, '6'], mention: [60, '25'] },
    { ...APART, label: "Landing area to another hole's line of play under" },
  ),
  ...tiers(
    'green-green',
    { stop: [30, '0'], look: [40, '1.4'], mention: [50, '4'] },
    { ...APART, label: 'Greens of two holes apart, centre to centre, under' },
  ),
  ...tiers(
    'green-tee',
    { stop: [30, '0.2'], look: [40, '4'], mention: [50, '10'] },
    { ...APART, label: 'Green to a tee that is not the next, under' },
  ),
  ...tiers(
    'green-next-tee',
    { stop: [15, '0'], look: [20, '0'], mention: [30, '1.9'] },
    { ...APART, label: 'Green centre to the next tee under' },
  ),
  ...tiers(
    'walk-landing',
    { stop: [20, '0'], look: [40, '0.6'], mention: [50, '1.9'] },
    { ...APART, label: "Walk to another hole's landing area under" },
  ),
} as const satisfies Record<string, SettingDefinition>;

/** Safety screening between holes, and against edges, public ground, the range and features. */
export const CLEARANCE_SETTINGS = {
  ...SPACING,
  ...PLACES_APART,
  ...FAN_SETTINGS,
  ...BOUNDARY_SETTINGS,
} as const satisfies Record<string, SettingDefinition>;
