import type { NamedEdit } from '@loopwright/document';
import { SETTING_KEYS, SETTINGS } from '@loopwright/model';
import { expect, test } from 'vitest';
import { EVERY_EDIT, LONG_PLAN, LONG_ROUTING } from './every-edit.test-plan.ts';
import { type Names, namesOf } from './names.ts';
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
const AT = { x: 0, y: 0 };
const OF_HOLE = { routing: 'a', hole: 'h6' };

const STEPS: readonly [NamedEdit, string][] = [
  [{ ...OF_HOLE, edit: 'move part', part: 'green', to: { x: 0, y: 0 } }, 'move of green 6'],
  [{ ...OF_HOLE, edit: 'pin', part: 'green' }, 'pinning of green 6'],
  [{ ...OF_HOLE, edit: 'reverse hole' }, 'reversal of hole 6'],
  [{ ...OF_HOLE, edit: 'judge', verdict: 'weak', reason: '' }, 'verdict on hole 6'],
  [{ ...OF_HOLE, edit: 'move in the round', loop: 'front', after: 'first' }, 'renumbering of hole 6'],
  [{ ...OF_HOLE, edit: 'draw hole', seat: 'spare', tees: {}, turnPoints: [] }, 'drawing of hole 6'],
  [{ ...OF_HOLE, edit: 'lengthen', end: 'green', by: -3 }, 'shortening of hole 6'],
  [{ edit: 'split loop', routing: 'a', loop: 'B', after: 'h1', as: { id: 'n', name: 'N' } }, 'split of loop ‘B’'],
  [{ edit: 'draw boundary', boundary: null }, 'removal of the boundary'],
  [
    { edit: 'move vertex', outline: { of: 'boundary', part: 'outlines', ring: 0 }, from: AT, to: AT },
    'change of the boundary',
  ],
  [{ edit: 'change image', image: 'i', to: { scaledBy: 'two points' } }, 'scaling of a picture'],
  [{ edit: 'several', does: 'taking out of 3 holes', edits: [] }, 'taking out of 3 holes'],
  [{ edit: 'put back what was tried', steps: 1 }, 'putting back of 1 step'],
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

test.each(EVERY_EDIT)('$edit has words for undo that fit a line, however long the names', (edit) => {
  const words = stepWords(edit, namesOf(LONG_PLAN, LONG_ROUTING, 'yards'), LONG_PLAN.teeSets);
  expect([...words].length).toBeLessThanOrEqual(80);
  expect(words).toMatch(/^\S.*\S$/u);
  expect(words).not.toMatch(/undefined|NaN|object/);
});

test('a hole that is not there any more is a hole, and a spare one goes by what it is called', () => {
  const names = namesOf(LONG_PLAN, LONG_ROUTING, 'yards');
  expect(stepWords({ edit: 'remove hole', routing: 'a', hole: 'gone' }, names, [])).toBe('removal of a hole');
  expect(stepWords({ edit: 'move hole', routing: 'a', hole: 's1', by: AT }, names, [])).toBe('move of spare 1');
});
