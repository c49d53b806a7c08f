import { SETTING_KEYS, SETTINGS } from '@loopwright/model';
import { expect, test } from 'vitest';
import { toLimitGroups } from './limits-view.ts';

test('every setting of the model stands in exactly one group', () => {
  const shown = toLimitGroups({}, 'metres').flatMap(({ limits }) => limits.map(({ key }) => key));
  expect([...shown].sort()).toEqual([...SETTING_KEYS].sort());
});

test('a changed limit is told from its default', () => {
  const key = SETTING_KEYS.find((each) => SETTINGS[each].unit === 'm');
  if (!key) throw new Error('no setting is a length');
  const find = (value?: number) =>
    toLimitGroups(value === undefined ? {} : { [key]: value }, 'yards')
      .flatMap(({ limits }) => limits)
      .find((limit) => limit.key === key);
  expect(find()?.changed).toBe(false);
  expect(find(SETTINGS[key].default)?.changed).toBe(false);
  // 45.72 m is 50 yd.
  expect(find(45.72)).toMatchObject({ value: 50, unit: 'yd', changed: true });
});

test('every limit says where it comes from', () => {
  for (const { limits } of toLimitGroups({}, 'metres')) {
    for (const { key, source } of limits) expect(source.length, key).toBeGreaterThan(3);
  }
});
