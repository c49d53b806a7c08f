import { expect, test } from 'vitest';
import type { NamedEdit } from './named-edit.ts';
import { runsOf } from './runs.ts';

const move = (hole: string, routing = 'a'): NamedEdit => ({ edit: 'move hole', routing, hole, by: { x: 1, y: 0 } });
const swap: NamedEdit = { edit: 'swap places', routing: 'a', hole: 'h1', with: 'h2' };

test('drags of different holes are one run', () => {
  const edits = [move('h1'), move('h2'), move('h1', 'b')];
  expect(runsOf(edits)).toEqual([edits]);
});

test('two drags of one hole are laid one after the other', () => {
  expect(runsOf([move('h1'), move('h2'), move('h1')])).toEqual([[move('h1'), move('h2')], [move('h1')]]);
});

test('an edit that looks at other holes is laid by itself, between what came before and after', () => {
  expect(runsOf([move('h1'), swap, move('h3'), move('h4')])).toEqual([[move('h1')], [swap], [move('h3'), move('h4')]]);
});

test('no edits make no runs', () => expect(runsOf([])).toEqual([]));
