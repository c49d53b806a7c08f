import { type LengthUnit, SETTINGS, type SettingKey, type SettingUnit } from '@loopwright/model';
import { fromField, toField, unitSymbol } from './lengths.ts';

/** The unit a setting is shown in: lengths follow the reader, shares are shown as per cent. */
export function settingUnit(unit: SettingUnit, units: LengthUnit): string {
  switch (unit) {
    case 'm':
      return unitSymbol(units);
    case 'deg':
      return '°';
    case 'share':
      return '%';
    case 'count':
    case 'ratio':
      return '';
    default:
      return unit;
  }
}

/** A setting's value as the reader's field shows it. */
export function settingToField(value: number, unit: SettingUnit, units: LengthUnit): number {
  if (unit === 'm') return toField(value, units);
  return unit === 'share' ? Math.round(value * 1000) / 10 : value;
}

/** What was typed, as the plan keeps it. */
export function settingFromField(value: number, unit: SettingUnit, units: LengthUnit): number {
  if (unit === 'm') return fromField(value, units);
  return unit === 'share' ? Math.round(value * 10) / 1000 : value;
}

/** A value with its unit: '50 yd', '15°', '75 %'. */
export function settingWords(key: SettingKey, value: number | 'default', units: LengthUnit): string {
  const { unit, default: usual } = SETTINGS[key];
  const shown = settingToField(value === 'default' ? usual : value, unit, units);
  const symbol = settingUnit(unit, units);
  return `${shown}${symbol === '°' || symbol === '' ? '' : ' '}${symbol}`;
}
