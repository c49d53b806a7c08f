import { expect, test } from 'vitest';
import { bringOut, chooseSheet, closeSecond, openSecond, tabBeside } from './drawer-tabs.ts';

test('a second sheet is what changed, or the card beside it', () => {
  expect(openSecond({ first: 'findings' })).toEqual({ first: 'findings', second: 'changed' });
  expect(openSecond({ first: 'changed' })).toEqual({ first: 'changed', second: 'card' });
  expect(closeSecond({ first: 'changed', second: 'card' })).toEqual({ first: 'changed' });
});

test('choosing the sheet that lies beside changes places', () => {
  const open = { first: 'card', second: 'changed' } as const;
  expect(chooseSheet(open, 'first', 'changed')).toEqual({ first: 'changed', second: 'card' });
  expect(chooseSheet(open, 'second', 'card')).toEqual({ first: 'changed', second: 'card' });
  expect(chooseSheet(open, 'second', 'limits')).toEqual({ first: 'card', second: 'limits' });
});

test('one sheet alone is simply changed', () => {
  expect(chooseSheet({ first: 'card' }, 'first', 'limits')).toEqual({ first: 'limits' });
});

test('a sheet that is asked for comes out unless it lies open already', () => {
  const open = { first: 'card', second: 'changed' } as const;
  expect(bringOut(open, 'changed')).toBe(open);
  expect(bringOut(open, 'site')).toEqual({ first: 'site', second: 'changed' });
});

test('arrows go from tab to tab and around; other keys are left alone', () => {
  expect(tabBeside('card', 'ArrowRight')).toBe('hole');
  expect(tabBeside('card', 'ArrowLeft')).toBe('points');
  expect(tabBeside('points', 'ArrowRight')).toBe('card');
  expect(tabBeside('limits', 'Home')).toBe('card');
  expect(tabBeside('limits', 'End')).toBe('points');
  expect(tabBeside('limits', 'x')).toBeUndefined();
});
