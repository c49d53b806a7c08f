import { expect, test } from 'vitest';
import { isHeard, parseSingleKeys } from './single-keys.ts';

const press = (key: string, ctrlKey = false) => ({ key, ctrlKey, metaKey: false });

test('letters and signs can be turned off, or kept to the drawing', () => {
  for (const key of ['h', '[', '?', '0', 'T']) {
    expect([isHeard(press(key), 'anywhere', false), isHeard(press(key), 'off', true)]).toEqual([true, false]);
    expect(isHeard(press(key), 'on the drawing', true)).toBe(true);
    expect(isHeard(press(key), 'on the drawing', false)).toBe(false);
  }
});

test('arrows, Escape, Space and keys with Ctrl stay whatever is chosen', () => {
  for (const key of ['ArrowUp', 'Escape', 'Delete', ' ']) expect(isHeard(press(key), 'off', false)).toBe(true);
  expect(isHeard(press('z', true), 'off', false)).toBe(true);
});

test('what was not kept is the usual', () => {
  expect([parseSingleKeys(undefined), parseSingleKeys('nonsense'), parseSingleKeys('off')]).toEqual([
    'anywhere',
    'anywhere',
    'off',
  ]);
});
