import type { NamedEdit } from '@loopwright/document';
import { SETTING_KEYS, SETTINGS } from '@loopwright/model';
import { expect, test } from 'vitest';
import type { Names } from './names.ts';
import { stepWords } from './step-words.ts';

const NAMES: Names = {
  number: () => '6',
  feature: (id) => id,
  base: (id) => id,
  loop: (id) => id,
  teeSet: (id) => id,
  length: (metres) => `${metres} m`,
  lengthChange: () => '',
  angle: (degrees) => `${degrees}°`,
};
const OF_HOLE = { routing: 'a', hole: 'h6' };

const STEPS: readonly [NamedEdit, string][] = [
  [{ ...OF_HOLE, edit: 'move part', part: 'green', to: { x: 0, y: 0 } }, 'move of green 6'],
  [{ ...OF_HOLE, edit: 'pin', part: 'green' }, 'pinning of green 6'],
  [{ ...OF_HOLE, edit: 'reverse hole' }, 'reversal of hole 6'],
  [{ ...OF_HOLE, edit: 'judge', verdict: 'weak', reason: '' }, 'verdict on hole 6'],
  [{ ...OF_HOLE, edit: 'move in the round', loop: 'front', after: 'first' }, 'renumbering of hole 6'],
];

test.each(STEPS)('%o reads %s', (edit, words) => {
  expect(stepWords(edit, NAMES, [])).toBe(words);
});

test('a changed limit goes by its label', () => {
  const setting = SETTING_KEYS[0];
  if (!setting) throw new Error('the model has no settings');
  expect(stepWords({ edit: 'change setting', setting, value: 200 }, NAMES, [])).toBe(
    `change of ‘${SETTINGS[setting].label}’`,
  );
});
