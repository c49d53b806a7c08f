import { expect, test } from 'vitest';
import { PLAN } from '../reading/two-holes.test-plan.ts';
import { courseWords, holesIn, oneFile, renamed, stepAfterReading } from './import-step.ts';

test('a bad file leaves the page waiting, with one sentence', () => {
  expect(stepAfterReading('a.json', { kind: 'unreadable', why: 'This file is empty.' })).toEqual({
    at: 'waiting',
    problem: 'a.json: This file is empty.',
  });
});

test('a taken course waits for its name', () => {
  expect(stepAfterReading('a.json', { kind: 'taken', plan: PLAN, notes: [] })).toMatchObject({
    at: 'ready',
    name: 'Ferrow Saltings',
  });
});

test('the board takes the name it was given, and keeps its own when none was', () => {
  expect(renamed(PLAN, '  New links ').site.name).toBe('New links');
  expect(renamed(PLAN, '  ')).toBe(PLAN);
});

test('one file at a time', () => {
  expect(oneFile([])).toHaveProperty('problem');
  const file = new File(['{}'], 'a.json');
  expect(oneFile([file])).toEqual({ file });
  expect(oneFile([file, file])).toHaveProperty('problem');
});

test('holes are counted with the spare ones', () => {
  expect(holesIn(PLAN)).toBe(3);
  expect(courseWords({ name: 'East', holes: 1 })).toBe('East, 1 hole');
});
