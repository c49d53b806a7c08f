import { expect, test } from 'vitest';
import { openViewpoint } from '../drawing/viewpoint.ts';
import { openSlot } from '../live/slot.ts';
import { openTestHand } from './hand.test-hand.ts';
import { openKeyWork, type PressedKey } from './key-work.ts';

const plain = { shiftKey: false, altKey: false, ctrlKey: false, metaKey: false };

function working() {
  const { hand, told, nothingIsDrawn } = openTestHand();
  const said: string[] = [];
  const session = { frame: openSlot(undefined), say: (words: string) => said.push(words) };
  const work = openKeyWork(hand, { session, viewpoint: openViewpoint(), where: () => '34 m east of green 4' });
  const press = (key: string, held: Partial<PressedKey> = {}) => work.down({ ...plain, ...held, key });
  return { work, press, told, hand, said, nothingIsDrawn };
}

test('arrows bring the cross, then move it ten metres, with Shift one', () => {
  const { press, hand, told } = working();
  press('ArrowUp');
  expect(hand.cross.get()).toEqual({ x: 0, y: 0 });
  press('ArrowUp');
  press('ArrowRight', { shiftKey: true });
  expect(hand.cross.get()).toEqual({ x: 1, y: 10 });
  expect(told.at(-1)).toBe('hover 1 10');
});

test('what is read off at the cross, and where it is, is said', () => {
  const { press, hand } = working();
  press('ArrowUp');
  expect(hand.heard.get()).toBe('120 m; 34 m east of green 4');
});

test('Space presses at the cross; Enter presses there and makes it the last', () => {
  const { press, told } = working();
  press('ArrowUp');
  press(' ');
  press('ArrowUp');
  press('Enter');
  expect(told).toEqual(['hover 0 0', 'press 0 0', 'hover 0 10', 'press 0 10', 'finish']);
});

test('Enter after a press at the same place is only the end', () => {
  const { press, told } = working();
  press('ArrowUp');
  press(' ');
  press('Enter');
  expect(told).toEqual(['hover 0 0', 'press 0 0', 'finish']);
});

test('without a cross Space moves the paper while it is held', () => {
  const { work, press, hand } = working();
  expect(press(' ')).toBe(true);
  expect(hand.paper.get()).toBe(true);
  work.up(' ');
  expect(hand.paper.get()).toBe(false);
});

test('a digit and an equals sign go to the field for typed values', () => {
  const { press, told } = working();
  expect([press('3'), press('=')]).toEqual([true, true]);
  expect(told).toEqual(['to entry', 'to entry']);
});

test('Backspace and undo take one point back; redo is left to the board', () => {
  const { press, told } = working();
  press('Backspace');
  press('z', { ctrlKey: true });
  expect(press('z', { ctrlKey: true, shiftKey: true })).toBe(false);
  expect(told).toEqual(['back', 'back']);
});

test('letters take instruments, one switches snapping, others are left to the board', () => {
  const { press, told, said } = working();
  expect(press('d')).toBe(true);
  press('n');
  expect(press('[')).toBe(false);
  expect(press('d', { ctrlKey: true })).toBe(false);
  expect(told).toEqual(['take draw hole', 'snap off']);
  expect(said).toHaveLength(1);
});

test('with the bare hand arrows and digits are left to the board', () => {
  const { press, hand } = working();
  hand.putAway();
  expect([press('ArrowUp'), press('3'), press('Enter'), press('Escape')]).toEqual([false, false, false, false]);
});
