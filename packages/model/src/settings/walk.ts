import type { SettingDefinition, SourceStatus } from './setting.ts';

interface Limit {
  readonly label: string;
  readonly metres: number;
  readonly source: string;
  readonly status?: SourceStatus;
  readonly safety?: true;
}

function limit({ label, metres, source, status = 'calibrated', safety }: Limit) {
  return {
    group: 'walk',
    label,
    default: metres,
    unit: 'm',
    least: 0,
    most: 20_000,
    source,
    status,
    ...(safety && { safety }),
  } satisfies SettingDefinition;
}

const WALKS = 'of 527 walks on 31 mapped courses';
const TURNS = "of 31 mapped courses' walks from the 9th green to the 10th tee";
const COMFORT =
  'the only published threshold is 80 yd (USGA Pace Rating System, carts); walkers notice about 100 yd and complain over 150–200 yd by common practice';
const CROSSINGS =
  '20 of 527 mapped walks cross a line of play, most within 29 m of a tee where a way behind it was near';

export const WALK_SETTINGS = {
  'long-walk-stop': limit({
    label: 'Walk from green to next tee longer than: stop',
    metres: 300,
    source: `0.4 % ${WALKS} are longer`,
  }),
  'long-walk-look': limit({
    label: 'Walk from green to next tee longer than: look',
    metres: 135,
    source: `8.5 % ${WALKS} are longer; ${COMFORT}`,
  }),
  'long-walk-mention': limit({
    label: 'Walk from green to next tee longer than: mention',
    metres: 90,
    source: `30 % ${WALKS} are longer; ${COMFORT}`,
  }),
  'long-walk-between-loops-stop': limit({
    label: 'Walk from one loop to the next longer than: stop',
    metres: 400,
    source: `none ${TURNS} is longer`,
  }),
  'long-walk-between-loops-look': limit({
    label: 'Walk from one loop to the next longer than: look',
    metres: 200,
    source: `3 % ${TURNS} are longer`,
  }),
  'long-walk-between-loops-mention': limit({
    label: 'Walk from one loop to the next longer than: mention',
    metres: 150,
    source: `23 % ${TURNS} are longer`,
  }),
  'long-walk-in-all-look': limit({
    label: 'All walks between 18 holes together longer than: look',
    metres: 2000,
    source: '6 % of 31 mapped courses walk further; scaled by the number of walks where a round has others than 17',
  }),
  'long-walk-in-all-mention': limit({
    label: 'All walks between 18 holes together longer than: mention',
    metres: 1500,
    source: '19 % of 31 mapped courses walk further; scaled by the number of walks where a round has others than 17',
  }),
  'walk-crossing-ahead': limit({
    label: 'A walk that crosses less than this ahead of a tee is said to cross in front of it',
    metres: 60,
    source: 'definition: 0–60 m ahead of a tee',
    status: 'definition',
    safety: true,
  }),
  'walk-crossing-short-of-green': limit({
    label: 'A walk that crosses in the last stretch before a green: look',
    metres: 60,
    source: CROSSINGS,
    safety: true,
  }),
  'walk-crossing-at-green': limit({
    label: 'A walk that crosses less than this before a green is said to cross short of it',
    metres: 40,
    source: 'definition: the last 40 m before a green',
    status: 'definition',
    safety: true,
  }),
  'walk-crossing-stop': limit({
    label: 'A walk that crosses a line of play at least this far from its tee: stop',
    metres: 50,
    source: CROSSINGS,
    safety: true,
  }),
  'walk-crossing-look': limit({
    label: 'A walk that crosses a line of play at least this far from its tee: look; nearer: mention',
    metres: 20,
    source: CROSSINGS,
    safety: true,
  }),
  'walk-crossing-landing': limit({
    label: 'A walk that crosses a line of play this near to a landing area is said to cross the landing area',
    metres: 30,
    source: 'common practice, no source: about where drives come to rest about the middle of a landing area',
    status: 'common practice',
    safety: true,
  }),
  'walk-crossing-mention': limit({
    label: 'A walk that crosses a line of play further ahead of its tee than this: mention',
    metres: 0,
    source: `${CROSSINGS}; behind a tee or a green is usual`,
    safety: true,
  }),
  'walk-crossing-road': {
    group: 'walk',
    label: 'A walk crosses a public road more often than this: look',
    default: 0,
    unit: 'count',
    least: 0,
    most: 20,
    source: 'common practice, no source: where people cross traffic is decided with the highway authority',
    status: 'common practice',
    safety: true,
  },
  'walk-crossing-range': limit({
    label: 'A walk goes over the practice range for more than this: look',
    metres: 0,
    source: 'common practice, no source: nobody walks where range balls fly',
    status: 'common practice',
    safety: true,
  }),
  'walk-crossing-water': {
    group: 'walk',
    label: 'A walk crosses water more often than this: mention, a bridge is needed',
    default: 0,
    unit: 'count',
    least: 0,
    most: 20,
    source: 'common practice, no source: water cannot be walked without a bridge',
    status: 'common practice',
  },
} as const satisfies Record<string, SettingDefinition>;
