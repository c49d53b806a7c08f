import type { SettingDefinition } from './setting.ts';
import { tiers } from './tiers.ts';

const EDGE = {
  group: 'clearance',
  unit: 'm',
  least: -50,
  most: 200,
  status: 'calibrated',
  safety: true,
  source: 'calibrated on 25 mapped boundaries',
} as const;

const ORDINANCE = {
  group: 'clearance',
  unit: 'm',
  least: 0,
  most: 200,
  source: 'one published ordinance: North Braddock Borough, Pennsylvania, code §155.156; your local code decides',
  status: 'published',
  safety: true,
} as const;

const BESIDE_FEATURE = {
  group: 'clearance',
  default: 0,
  unit: 'm',
  least: 0,
  most: 100,
  source: "the feature's own buffer, set on the board with whose line it is; nothing is added to it",
  status: 'definition',
} as const;

/** Where the site ends, where the public is, where the range plays, and what each feature allows. */
export const BOUNDARY_SETTINGS = {
  ...tiers(
    'edge-line',
    { stop: [0, '1.2'], look: [15, '10'], mention: [30, '28'] },
    { ...EDGE, label: 'Boundary to line of play under' },
  ),
  ...tiers(
    'edge-landing',
    { stop: [10, '0.8'], look: [20, '4'], mention: [46, '27'] },
    { ...EDGE, label: 'Boundary to landing area under' },
  ),
  ...tiers(
    'edge-green',
    { stop: [5, '0.2'], look: [15, '3'], mention: [30, '19'] },
    { ...EDGE, label: 'Boundary to green centre under' },
  ),
  ...tiers('edge-tee', { stop: [0, '1.3'], mention: [10, '13'] }, { ...EDGE, label: 'Boundary to tee under' }),
  'edge-line-ends': {
    group: 'clearance',
    label: 'Boundary to line of play leaves out this much at both ends',
    default: 60,
    unit: 'm',
    least: 0,
    most: 150,
    source: 'the measure the boundary limits were calibrated with',
    status: 'definition',
  },
  'public-tee-stop': { ...ORDINANCE, label: 'Road, public path or neighbour beside a tee under', default: 22.86 },
  'public-landing-stop': {
    ...ORDINANCE,
    label: 'Road, public path or neighbour beside a landing area under',
    default: 45.72,
  },
  'public-green-stop': { ...ORDINANCE, label: 'Road, public path or neighbour beside a green under', default: 30.48 },
  'public-look': {
    group: 'clearance',
    label: 'Road, public path or neighbour beside the line of play under',
    default: 60,
    unit: 'm',
    least: 0,
    most: 200,
    source: 'European architects ask for a corridor of 120 m at least (R. Hiseman, golfclubatlas.com topic 48596)',
    status: 'published',
    safety: true,
  },
  'public-angle': {
    group: 'clearance',
    label: 'Shot fan towards roads, public paths and neighbours, angle each side',
    default: 15,
    unit: 'deg',
    least: 5,
    most: 45,
    source: 'Hurdzan 1996 as quoted by J. Brauer (2009): 15° as safety angle',
    status: 'published, second hand',
    safety: true,
  },
  'range-reach': {
    group: 'clearance',
    label: 'Practice range, how far its shots go',
    default: 247,
    unit: 'm',
    least: 100,
    most: 350,
    source: "the course rating's scratch man, 250 yd, and 20 yd of roll",
    status: 'published',
    safety: true,
  },
  'feature-carry': { ...BESIDE_FEATURE, label: 'Line of play over ground that may not be carried: beyond its buffer' },
  'feature-mow': { ...BESIDE_FEATURE, label: 'Landing area on ground that may not be mown: beyond its buffer' },
  'feature-build': { ...BESIDE_FEATURE, label: 'Tee or green on ground that may not be built on: beyond its buffer' },
  'feature-walk': { ...BESIDE_FEATURE, label: 'Walk over ground that may not be walked: beyond its buffer' },
} as const satisfies Record<string, SettingDefinition>;
