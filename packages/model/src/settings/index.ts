import { CARD_SETTINGS } from './card.ts';
import { CLEARANCE_SETTINGS } from './clearance.ts';
import { DIRECTION_SETTINGS } from './direction.ts';
import { RHYTHM_SETTINGS } from './rhythm.ts';
import type { SettingDefinition } from './setting.ts';
import { WALK_SETTINGS } from './walk.ts';

const ALL = { ...CARD_SETTINGS, ...WALK_SETTINGS, ...CLEARANCE_SETTINGS, ...DIRECTION_SETTINGS, ...RHYTHM_SETTINGS };

export type SettingKey = keyof typeof ALL;
export type SettingOverrides = Readonly<Partial<Record<SettingKey, number>>>;
/** Every setting with a value: the default, or what this board chose. */
export type Settings = Readonly<Record<SettingKey, number>>;

/** Every limit of the analysis, with its default, unit and source. */
export const SETTINGS: Readonly<Record<SettingKey, SettingDefinition>> = ALL;

/** The keys in the order the page lists them. */
export const SETTING_KEYS = Object.keys(ALL) as readonly SettingKey[];

/** Whether an untrusted name is a setting's. */
export function isSettingKey(name: string): name is SettingKey {
  return Object.hasOwn(ALL, name);
}

/** The settings in force on a board. */
export function settingsOf(overrides: SettingOverrides): Settings {
  const values = Object.fromEntries(SETTING_KEYS.map((key) => [key, overrides[key] ?? SETTINGS[key].default]));
  return Object.freeze(values) as Settings;
}
