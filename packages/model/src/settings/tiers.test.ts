import { expect, test } from 'vitest';
import { SETTINGS } from './index.ts';
import { tiers } from './tiers.ts';

const ABOUT = {
  group: 'clearance',
  label: 'Greens apart under',
  unit: 'm',
  least: 0,
  most: 100,
  status: 'calibrated',
  source: 'calibrated on 31 mapped courses',
} as const;

test('each severity is a limit of its own, with its share of real cases in its source', () => {
  const settings = tiers('green-green', { stop: [30, '0'], look: [40] }, ABOUT);
  expect(Object.keys(settings)).toEqual(['green-green-stop', 'green-green-look']);
  expect(settings['green-green-stop']).toMatchObject({ default: 30, label: 'Greens apart under (stop)' });
  expect(settings['green-green-stop'].source).toBe('calibrated on 31 mapped courses: 0 % of real cases are beyond');
  expect(settings['green-green-look'].source).toBe('calibrated on 31 mapped courses');
});

test('every default lies within what the page lets a person choose', () => {
  for (const [key, { default: value, least, most }] of Object.entries(SETTINGS)) {
    expect(value, key).toBeGreaterThanOrEqual(least);
    expect(value, key).toBeLessThanOrEqual(most);
  }
});

test('direction and rhythm know no stop', () => {
  const stops = Object.entries(SETTINGS).filter(
    ([key, { group }]) => /rhythm|direction/.test(group) && key.endsWith('-stop'),
  );
  expect(stops).toEqual([]);
});
