import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readCourseFile, writeBoardFile } from '@loopwright/formats';
import { describe, expect, test } from 'vitest';
import { readCourseText } from './read-file.ts';
import type { Report } from './report/report.ts';
import { run } from './run.ts';

const SAMPLES = fileURLToPath(new URL('../../../tests/samples/', import.meta.url));

async function loopwright(...words: string[]) {
  const out: string[] = [];
  const errors: string[] = [];
  const code = await run(words, {
    read: readCourseText,
    say: (text) => out.push(text),
    complain: (sentence) => errors.push(sentence),
  });
  return { code, out: out.join(''), errors };
}

async function reportOf(...words: string[]): Promise<Report> {
  const { out, code, errors } = await loopwright('report', ...words, '--format', 'json');
  expect({ code, errors }).toEqual({ code: 0, errors: [] });
  return JSON.parse(out) as Report;
}

describe('the report as JSON', () => {
  test('has the documented keys and no others', async () => {
    const report = await reportOf(`${SAMPLES}clean.geojson`);
    expect(Object.keys(report)).toEqual(['loopwright', 'course', 'holes', 'loops', 'total', 'findings', 'importNotes']);
    const [hole] = report.holes;
    expect(Object.keys(hole ?? {})).toEqual([
      'number',
      'loop',
      'par',
      'teeSets',
      'bearingDegrees',
      'bendDegrees',
      'walkToNextMetres',
      'approachMetres',
    ]);
    for (const finding of report.findings)
      expect(Object.keys(finding)).toEqual([
        'code',
        'severity',
        'holes',
        'measured',
        'limit',
        'unit',
        'place',
        'text',
        'source',
      ]);
    expect(report.total).toMatchObject({ par: 72 });
  });

  test('adds up: loops to the total, holes to their loop, played and walked to the round', async () => {
    const { holes, loops, total } = await reportOf(`${SAMPLES}clean.geojson`);
    const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);
    for (const loop of loops) {
      const own = holes.filter((hole) => hole.loop === loop.name);
      expect(sum(own.map(({ teeSets }) => teeSets.Back?.lengthMetres ?? 0))).toBeCloseTo(loop.lengthMetres, 2);
      expect(sum(own.map(({ par }) => par.men))).toBe(loop.par);
    }
    expect(sum(loops.map(({ lengthMetres }) => lengthMetres))).toBeCloseTo(total.lengthMetres, 2);
    expect(total.lengthMetres + total.walkMetres).toBeCloseTo(total.roundMetres, 2);
  });

  test('puts findings on Earth for a located course', async () => {
    const { findings } = await reportOf(`${SAMPLES}clean.geojson`);
    const positions = findings.flatMap(({ place }) =>
      place === null ? [] : place.type === 'Point' ? [place.coordinates] : place.coordinates,
    );
    expect(positions.length).toBeGreaterThan(0);
    for (const [lon, lat] of positions) {
      expect(Math.abs(lon + 20.49)).toBeLessThan(0.03);
      expect(Math.abs(lat - 51.302)).toBeLessThan(0.03);
    }
  });

  test('is the same for a course and for the board file made of it, but for the notes', async () => {
    const file = readCourseFile(readFileSync(`${SAMPLES}clean.geojson`, 'utf8'));
    if (file.kind !== 'courses') throw new Error('the clean sample is a course');
    const board = writeBoardFile(file.take(0).plan);
    const out: string[] = [];
    await run(['report', 'board.json', '--format', 'json'], {
      read: async () => ({ kind: 'text', text: board }),
      say: (text) => out.push(text),
      complain: (sentence) => expect.fail(sentence),
    });
    const { importNotes, ...course } = await reportOf(`${SAMPLES}clean.geojson`);
    expect(importNotes.length).toBeGreaterThan(0);
    expect(JSON.parse(out.join(''))).toEqual({ ...course, importNotes: [] });
  });
});

test('the text is no wider than its page and ends with the caution and the notes', async () => {
  const { out } = await loopwright('report', `${SAMPLES}dirty.geojson`, '--units', 'yards');
  for (const line of out.split('\n')) expect([...line].length).toBeLessThanOrEqual(96);
  expect(out).toMatch(/lengths in yards/);
  expect(out).toMatch(/no ground yet/);
  expect(out).toMatch(/Hole 4: The line was drawn from green to tee/);
});

test.each([
  [['report', `${SAMPLES}truncated.geojson`], 4, /cut off/],
  [['report', `${SAMPLES}nowhere.geojson`], 3, /There is no file/],
  [['report', SAMPLES], 3, /is a folder/],
  [['report', `${SAMPLES}two-courses.geojson`], 2, /2 courses.*'Made-up New', 'Made-up Old'/],
  [['report', `${SAMPLES}two-courses.geojson`, '--course', 'Old'], 2, /No course here is called 'Old'/],
  [['report', `${SAMPLES}clean.geojson`, '--routing', 'B'], 2, /No routing here is called 'B': there is 'As mapped'/],
  [['repot'], 2, /no command/],
])('%j leaves with %i and one sentence', async (words, code, why) => {
  const answer = await loopwright(...words);
  expect(answer).toMatchObject({ code, out: '', errors: [expect.stringMatching(why)] });
});

test('one of several courses is chosen by name, in any case of letters', async () => {
  const report = await reportOf(`${SAMPLES}two-courses.geojson`, '--course', 'made-up old');
  expect(report.course).toBe('Made-up Old');
  expect(report.holes).toHaveLength(9);
});
