import type { SettingDefinition } from './setting.ts';

const PLAYERS =
  'Course Rating System: the model player, at sea level (Golf Association of Michigan and Oregon Golf Association; 0.9144 m to the yard)';

/** One distance of a model player; published in yards, kept in metres. */
function reach(label: string, yards: number, source: string = PLAYERS) {
  return {
    group: 'card',
    label,
    default: Math.round(yards * 914.4) / 1000,
    unit: 'm',
    least: 50,
    most: 350,
    source: `${yards} yd. ${source}`,
    status: 'published',
  } as const satisfies SettingDefinition;
}

const SECOND = 'reach in two less the tee shot, Course Rating System';

const ORDINANCE =
  'North Braddock Borough, Pennsylvania, code §155.156: 75 ft at the tee, 150 ft at the landing area, 100 ft at the green, from the centreline to a property line. One ordinance, not a standard; practised figures differ';

/** Half-width of the strip along the centreline that play and safety need. */
function halfWidth(label: string, metres: number) {
  return {
    group: 'clearance',
    label,
    default: metres,
    unit: 'm',
    least: 5,
    most: 150,
    source: ORDINANCE,
    status: 'published',
    safety: true,
  } as const satisfies SettingDefinition;
}

export const CARD_SETTINGS = {
  'scratch-man-drive': reach('Tee shot of the scratch man', 250),
  'scratch-man-second': reach('Second full shot of the scratch man', 220, SECOND),
  'bogey-man-drive': reach('Tee shot of the bogey man', 200),
  'bogey-man-second': reach('Second full shot of the bogey man', 170, SECOND),
  'scratch-woman-drive': reach('Tee shot of the scratch woman', 210),
  'scratch-woman-second': reach('Second full shot of the scratch woman', 190, SECOND),
  'bogey-woman-drive': reach('Tee shot of the bogey woman', 150),
  'bogey-woman-second': reach('Second full shot of the bogey woman', 130, SECOND),
  'landing-short-of-green': {
    group: 'card',
    label: 'A landing area nearer to its green than this is left to the green',
    default: 60,
    unit: 'm',
    least: 0,
    most: 120,
    source: 'how landing areas were laid on the 31 mapped courses that the limits were calibrated on',
    status: 'calibrated',
  },
  'proposed-tee-aside': {
    group: 'card',
    label: "A proposed tee stands this far aside of the back tee's line",
    default: 15,
    unit: 'm',
    least: 0,
    most: 60,
    source: 'common practice, no source: room for a tee and its bank beside the line of the tee behind',
    status: 'common practice',
  },
  'turn-at-drive': {
    group: 'card',
    label: 'A new turn point is drawn to lie this far from the tee',
    default: 240,
    unit: 'm',
    least: 100,
    most: 350,
    source: 'common practice, no source: the drive that designers lay their turns out for; it limits nothing',
    status: 'common practice',
  },
  'tee-from-green': {
    group: 'walk',
    label: 'A new tee is drawn to lie this far from the middle of the green before',
    default: 50,
    unit: 'm',
    least: 15,
    most: 150,
    source: 'common practice, no source: clear of the green and still a short walk; it limits nothing',
    status: 'common practice',
  },
  'corridor-tee': halfWidth('Half-width of the corridor at the tee', 23),
  'corridor-landing': halfWidth('Half-width of the corridor at the landing area', 46),
  'corridor-green': halfWidth('Half-width of the corridor at the green', 30),
  'corridor-behind': halfWidth('Depth of the corridor behind the green', 30),
} as const satisfies Record<string, SettingDefinition>;
