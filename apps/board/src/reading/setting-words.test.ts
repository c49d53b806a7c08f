import { SETTING_KEYS, SETTINGS } from '@loopwright/model';
import { expect, test } from 'vitest';
import { settingFromField, settingToField, settingUnit, settingWords } from './setting-words.ts';

test('a length follows the reader, a share is shown as per cent', () => {
  // 45.72 m is 50 yd by the definition of the yard.
  expect(settingToField(45.72, 'm', 'yards')).toBe(50);
  expect(settingToField(0.755, 'share', 'yards')).toBe(75.5);
  expect(settingUnit('m', 'metres')).toBe('m');
  expect(settingUnit('count', 'yards')).toBe('');
});

test('what is typed is kept in metres and shares', () => {
  expect(settingFromField(50, 'm', 'yards')).toBe(45.72);
  expect(settingFromField(75.5, 'share', 'yards')).toBe(0.755);
  expect(settingFromField(15, 'deg', 'yards')).toBe(15);
});

test('every setting of the model can be written for both readers', () => {
  for (const key of SETTING_KEYS) {
    expect(settingWords(key, 'default', 'metres'), key).toMatch(/^−?[\d.]+/);
    expect(settingWords(key, SETTINGS[key].most, 'yards'), key).toMatch(/^−?[\d.]+/);
  }
});
