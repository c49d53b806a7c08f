import { expect, test } from 'vitest';
import { noteHeading } from './note-words.ts';

test.each([
  ['An invented site: no such land, road, path or person.', 'Invented site'],
  ['the old quarry', 'Old quarry'],
  ['Everything west of the stream was surveyed by hand in the wet spring.', 'Note'],
  ['', 'Note'],
])('the note %j is headed %j', (note, heading) => {
  expect(noteHeading(note)).toBe(heading);
});
