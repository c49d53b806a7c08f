import {
  type LengthUnit,
  SETTING_KEYS,
  SETTINGS,
  type SettingGroup,
  type SettingKey,
  type SettingOverrides,
} from '@loopwright/model';
import { settingToField, settingUnit, settingWords } from '../../reading/setting-words.ts';

/** One limit with its value, default and where the default comes from. */
export interface LimitView {
  readonly key: SettingKey;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly usual: string;
  readonly changed: boolean;
  readonly source: string;
  readonly status: string;
  readonly safety: boolean;
}

export interface LimitGroup {
  readonly key: SettingGroup;
  readonly title: string;
  readonly limits: readonly LimitView[];
  readonly changed: number;
}

const TITLES: Readonly<Record<SettingGroup, string>> = {
  card: 'Card',
  walk: 'Walks',
  clearance: 'Clearance',
  direction: 'Direction',
  rhythm: 'Rhythm',
};

/** Every setting of the board in the reader's units, by subject, in the model's order. */
export function toLimitGroups(overrides: SettingOverrides, units: LengthUnit): readonly LimitGroup[] {
  const groups = Object.keys(TITLES).filter((name): name is SettingGroup => Object.hasOwn(TITLES, name));
  return groups.flatMap((group) => {
    const limits = SETTING_KEYS.filter((key) => SETTINGS[key].group === group).map((key) =>
      toLimit(key, overrides, units),
    );
    if (limits.length === 0) return [];
    return [{ key: group, title: TITLES[group], limits, changed: limits.filter(({ changed }) => changed).length }];
  });
}

function toLimit(key: SettingKey, overrides: SettingOverrides, units: LengthUnit): LimitView {
  const { label, unit, default: usual, least, most, source, status, safety } = SETTINGS[key];
  const value = overrides[key] ?? usual;
  return {
    key,
    label,
    value: settingToField(value, unit, units),
    unit: settingUnit(unit, units),
    least: settingToField(least, unit, units),
    most: settingToField(most, unit, units),
    step: unit === 'm' || unit === 'share' ? 0.1 : unit === 'deg' || unit === 'count' || unit === 'min' ? 1 : 0.01,
    usual: settingWords(key, 'default', units),
    changed: value !== usual,
    source,
    status,
    safety: safety === true,
  };
}
