import type { SettingDefinition } from './setting.ts';
import { tiers } from './tiers.ts';

const IN_FAN = {
  group: 'clearance',
  unit: 'm',
  least: 0,
  most: 150,
  status: 'calibrated',
  safety: true,
  source: 'calibrated on 31 mapped courses, in a cone of 15°',
} as const;

/** The shot fans: the ground a ball may reach, with the corridor's half-widths (see the card's settings). */
export const FAN_SETTINGS = {
  'fan-inner-angle': {
    group: 'clearance',
    label: 'Shot fan, inner angle each side of the line',
    default: 10,
    unit: 'deg',
    least: 2,
    most: 30,
    source: 'compared with 31 mapped courses: a well-liked course has about one tee or green inside 10°',
    status: 'calibrated',
    safety: true,
  },
  'fan-outer-angle': {
    group: 'clearance',
    label: 'Shot fan, outer angle each side of the line',
    default: 15,
    unit: 'deg',
    least: 5,
    most: 45,
    source:
      'Hurdzan 1996 as quoted by J. Brauer (2009): over 90 % of balls within 150 ft either side, 15° as safety angle',
    status: 'published, second hand',
    safety: true,
  },
  'fan-roll': {
    group: 'clearance',
    label: "Shot fan, roll beyond the model player's drive",
    default: 18,
    unit: 'm',
    least: 0,
    most: 80,
    source: 'course raters count 20 yd of roll on flat ground; added to the whole drive, to be on the wide side',
    status: 'published, second hand',
    safety: true,
  },
  'fan-past-green': {
    group: 'clearance',
    label: 'Shot fan, how far past the green',
    default: 30,
    unit: 'm',
    least: 0,
    most: 100,
    source: 'common practice, no source',
    status: 'common practice',
    safety: true,
  },
  'fan-cut-gain': {
    group: 'clearance',
    label: 'A corner counts as cut when the drive finishes past the turn by at least',
    default: 20,
    unit: 'm',
    least: 0,
    most: 100,
    source: 'common practice, no source',
    status: 'common practice',
    safety: true,
  },
  ...tiers(
    'fan-tee',
    { stop: [30, '0'], look: [40, '1.1'], mention: [50, '3'] },
    { ...IN_FAN, label: "Another hole's tee inside the shot fan, to the line of the shot under" },
  ),
  ...tiers(
    'fan-green',
    { stop: [30, '0.2'], look: [40, '0.5'], mention: [50, '1.4'] },
    { ...IN_FAN, label: "Another hole's green inside the shot fan, to the line of the shot under" },
  ),
  ...tiers(
    'fan-next',
    { stop: [20, '0.2'], look: [30, '1.1'], mention: [40, '3'] },
    { ...IN_FAN, label: 'Next tee, or last green, inside the shot fan, to the line of the shot under' },
  ),
  'walk-in-fan-mention': {
    group: 'clearance',
    label: "Walk inside another hole's shot fan for more than",
    default: 20,
    unit: 'm',
    least: 0,
    most: 300,
    source: 'common practice, no source',
    status: 'common practice',
    safety: true,
  },
} as const satisfies Record<string, SettingDefinition>;
