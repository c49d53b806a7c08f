import type { SettingDefinition } from './setting.ts';

export const WALK_SETTINGS = {
  'walk-long-stop': {
    group: 'walk',
    label: 'Walk from green to next tee, longer than',
    default: 300,
    unit: 'm',
    least: 0,
    most: 2000,
    source: 'calibrated on 31 mapped courses: 0.4 % of 527 walks are longer',
    status: 'calibrated',
  },
} as const satisfies Record<string, SettingDefinition>;
