import { expect, test } from 'vitest';
import { namesOf } from '../reading/names.ts';
import { PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { droppedWords, grabbedWords, movedWords } from './bead-words.ts';

const NAMES = namesOf(PLAN, ROUTING, 'yards');

test('places are said by the holes they follow', () => {
  expect(movedWords({ holes: ['h1'], place: { in: 'loop', loop: 'front', after: 'h2' } }, NAMES)).toBe(
    'Hole 1: after hole 2 on Front nine.',
  );
  expect(droppedWords({ holes: ['h2'], place: { in: 'loop', loop: 'front', after: 'first' } }, NAMES)).toBe(
    'Hole 2 put down: first on Front nine.',
  );
  expect(movedWords({ holes: ['h2'], place: { in: 'tray' } }, NAMES)).toMatch(/spare tray/);
});

test('picking up says how to go on', () => {
  expect(grabbedWords(['h2'], NAMES)).toMatch(/^Hole 2 picked up\. Arrow/);
  expect(grabbedWords(['h1', 'h2'], NAMES)).toMatch(/^2 holes picked up/);
});
