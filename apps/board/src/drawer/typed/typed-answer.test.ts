import { expect, test } from 'vitest';
import { bearingAnswer, coordinateAnswer, lengthAnswer } from './typed-answer.ts';

const bounds = { least: 4, most: 200 };
const edit = (width: number) =>
  ({ edit: 'shape green', routing: 'a', hole: 'h1', shape: { length: 30, width, bearing: 0 } }) as const;
const typed = (text: string, units: 'metres' | 'yards' = 'metres') => lengthAnswer(text, 20, units, bounds, edit);

test('a typed figure becomes the edit, to the millimetre', () => {
  expect(typed('24,5')).toEqual({ kind: 'edit', edit: edit(24.5) });
  expect(typed('30', 'yards')).toEqual({ kind: 'edit', edit: edit(27.432) }); // 30 × 0.9144
  expect(typed('+2')).toEqual({ kind: 'edit', edit: edit(22) });
});

test('the figure that stands there already is no edit', () => {
  expect(typed('20')).toEqual({ kind: 'same' });
  expect(typed('20.04 m')).toEqual({ kind: 'same' });
});

test('what is out of bounds, or no figure, says so', () => {
  expect(typed('3')).toEqual({ kind: 'wrong', why: 'It goes from 4 m to 200 m.' });
  expect(typed('wide')).toMatchObject({ kind: 'wrong', why: expect.stringContaining('not a figure') });
});

test('a bearing is read in degrees and compared as it is shown', () => {
  const turn = (bearing: number) => ({ ...edit(20), shape: { length: 30, width: 20, bearing } });
  expect(bearingAnswer('90', 0, turn)).toEqual({ kind: 'edit', edit: turn(Math.PI / 2) });
  expect(bearingAnswer('45°', Math.PI / 4, turn)).toEqual({ kind: 'same' });
  expect(bearingAnswer('400', 0, turn)).toMatchObject({ kind: 'wrong' });
});

test('a coordinate is in metres whatever the reader reads, and may lie west or south', () => {
  const at = (x: number) => ({ ...edit(20), edit: 'move part', part: 'green', to: { x, y: 0 } }) as const;
  expect(coordinateAnswer('−1.234,5', 20, at)).toEqual({ kind: 'edit', edit: at(-1234.5) });
  expect(coordinateAnswer('20.02', 20, at)).toEqual({ kind: 'same' });
  expect(coordinateAnswer('2000 km', 20, at).kind).toBe('wrong');
});
