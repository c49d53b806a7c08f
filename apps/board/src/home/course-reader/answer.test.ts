import { LARGEST_COURSE_FILE } from '@loopwright/formats';
import { expect, test } from 'vitest';
import { courseAnswers } from './answer.ts';

const fileOf = (text: string) => new Blob([text]);

/** A hole of some 400 m, drawn from tee to green, in WGS 84 degrees. */
const hole = (course: string, ref: string, east: number) => ({
  type: 'Feature',
  properties: { golf: 'hole', ref, par: '4', 'golf:course:name': course },
  geometry: {
    type: 'LineString',
    coordinates: [
      [10 + east, 54],
      [10 + east, 54.0036],
    ],
  },
});
const collection = (...features: unknown[]) => JSON.stringify({ type: 'FeatureCollection', features });

test('a file that is too large is refused before it is read', async () => {
  const file = {
    size: LARGEST_COURSE_FILE + 1,
    text: () => Promise.reject(new Error('it was read')),
  } as unknown as Blob;
  const answer = await courseAnswers()({ ask: 'read', file });
  expect(answer).toMatchObject({ kind: 'unreadable', why: expect.stringMatching(/MB/) });
});

test('one course is taken at once', async () => {
  const answer = await courseAnswers()({ ask: 'read', file: fileOf(collection(hole('Ferrow', '1', 0))) });
  expect(answer.kind).toBe('taken');
});

test('several courses are offered for choice and the chosen one is taken', async () => {
  const ask = courseAnswers();
  const read = await ask({ ask: 'read', file: fileOf(collection(hole('East', '1', 0), hole('West', '1', 0.01))) });
  expect(read).toMatchObject({ kind: 'courses', courses: [{ holes: 1 }, { holes: 1 }] });
  expect((await ask({ ask: 'take', index: 1 })).kind).toBe('taken');
  expect((await ask({ ask: 'take', index: 2 })).kind).toBe('unreadable');
});

test.each(['', '{"type":"Feature', '<html>', '42', '[NaN]'])('%j is one sentence, never an exception', async (text) => {
  const answer = await courseAnswers()({ ask: 'read', file: fileOf(text) });
  expect(answer).toMatchObject({ kind: 'unreadable', why: expect.stringMatching(/\.$/) });
});
