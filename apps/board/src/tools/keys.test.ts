import type { Hole, Routing } from '@loopwright/model';
import { expect, test } from 'vitest';
import { isEverywhere, meaningOf } from './keys.ts';
import { neighbourInRound, nextPart } from './nudge.ts';

const plain = { ctrlKey: false, metaKey: false, shiftKey: false, altKey: false };

test('arrows mean a metre, with Shift ten, and up is north', () => {
  expect(meaningOf({ ...plain, key: 'ArrowUp' })).toEqual({ do: 'nudge', x: 0, y: 1 });
  expect(meaningOf({ ...plain, key: 'ArrowLeft', shiftKey: true })).toEqual({ do: 'nudge', x: -10, y: 0 });
});

test.each([
  [{ ...plain, key: 'z', ctrlKey: true }, 'undo'],
  [{ ...plain, key: 'Z', ctrlKey: true, shiftKey: true }, 'redo'],
  [{ ...plain, key: 'y', metaKey: true }, 'redo'],
  [{ ...plain, key: 'R', shiftKey: true }, 'reverse'],
  [{ ...plain, key: '?', shiftKey: true }, 'keys'],
  [{ ...plain, key: 'Escape' }, 'let go'],
])('%o means %s', (pressed, meaning) => {
  expect(meaningOf(pressed)?.do).toBe(meaning);
});

test('keys of the browser and the system are left to them', () => {
  expect(meaningOf({ ...plain, key: 'r', ctrlKey: true })).toBeUndefined();
  expect(meaningOf({ ...plain, key: 'ArrowLeft', altKey: true })).toBeUndefined();
  expect(meaningOf({ ...plain, key: 'Tab' })).toBeUndefined();
});

test('only harmless keys work everywhere; moving and reversing belong to the drawing', () => {
  expect(isEverywhere({ do: 'undo' })).toBe(true);
  expect(isEverywhere({ do: 'reverse' })).toBe(false);
  expect(isEverywhere({ do: 'nudge', x: 1, y: 0 })).toBe(false);
});

const hole: Hole = {
  id: 'h1',
  seat: { in: 'loop', loop: 'l1', key: 'a' },
  tees: { back: { x: 10, y: 0 } },
  turnPoints: [{ id: 't1', at: { x: 10, y: 200 } }],
  green: { centre: { x: 10, y: 300 }, length: 30, width: 20, bearing: 0 },
  par: { men: 'by length', women: 'by length' },
  verdict: 'undecided',
  pinned: [],
  waypoints: [],
  relations: [],
};
const routing: Routing = {
  id: 'r1',
  name: 'A',
  locked: false,
  loops: [{ id: 'l1', name: 'Only', holes: ['h2', 'h1'] }],
  rounds: [],
  holes: [hole, { ...hole, id: 'h2' }, { ...hole, id: 'h3' }],
  spare: ['h3'],
};

test('P goes through the parts in order of play, then all of it', () => {
  expect(nextPart(hole, undefined)).toBe('tee:back');
  expect(nextPart(hole, 'tee:back')).toBe('turn:t1');
  expect(nextPart(hole, 'turn:t1')).toBe('green');
  expect(nextPart(hole, 'green')).toBeUndefined();
});

test('brackets go through the round, then the spare holes, and around', () => {
  expect(neighbourInRound(routing, undefined, 1)).toBe('h2');
  expect(neighbourInRound(routing, 'h2', 1)).toBe('h1');
  expect(neighbourInRound(routing, 'h1', 1)).toBe('h3');
  expect(neighbourInRound(routing, 'h3', 1)).toBe('h2');
  expect(neighbourInRound(routing, 'h2', -1)).toBe('h3');
});

test('Ctrl + A picks out all holes, Delete takes out, the menu key and Shift + F10 open the menu', () => {
  expect(meaningOf({ ...plain, key: 'a', ctrlKey: true })).toEqual({ do: 'choose all' });
  expect(meaningOf({ ...plain, key: 'Delete' })).toEqual({ do: 'take out' });
  expect(meaningOf({ ...plain, key: 'ContextMenu' })).toEqual({ do: 'menu' });
  expect(meaningOf({ ...plain, key: 'F10', shiftKey: true })).toEqual({ do: 'menu' });
  expect(meaningOf({ ...plain, key: 'F10' })).toBeUndefined();
  expect(meaningOf({ ...plain, key: '}', shiftKey: true })).toEqual({ do: 'choose further', step: 1 });
});
