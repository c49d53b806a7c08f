import { newPlan } from '@loopwright/model';
import { expect, test } from 'vitest';
import { imageForWorldFile, layByWorldFile, unitChoices, withGrid } from './world-file-import.ts';

const { site } = newPlan({ name: 'Moor', units: 'metres', holes: 18, freshId: (letter) => `${letter}1` });
// Pixels of half a unit, the corner of the image at (500000, 300000).
const TERMS = { a: 0.5, d: 0, b: 0, e: -0.5, c: 500_000.25, f: 299_999.75 };
const PIXELS = { widthPixels: 2000, heightPixels: 1000 };

test('each unit says how wide it would make the picture', () => {
  expect(unitChoices(TERMS, PIXELS, 'metres').map(({ words }) => words)).toEqual([
    'Metres (1,000 m wide)',
    'US survey feet (305 m wide)',
    'International feet (305 m wide)',
  ]);
});

test('the first picture brings the survey grid, a later one lands beside it', () => {
  const first = layByWorldFile(TERMS, PIXELS, 'metres', site);
  // Its middle is (500500, 299750): on whole hundreds the grid begins at (500500, 299800).
  expect(first).toMatchObject({
    placement: [0.5, 0, -500, 0, -0.5, 200],
    grid: { edit: 'set grid', grid: { easting: 500_500, northing: 299_800 } },
  });
  const onGrid = { ...site, grid: { easting: 500_500, northing: 299_800 } };
  const second = layByWorldFile({ ...TERMS, c: TERMS.c + 1000 }, PIXELS, 'metres', onGrid);
  expect(second).toEqual({ kind: 'laid', placement: [0.5, 0, 500, 0, -0.5, 200], grid: undefined });
});

test('a picture that would lie in another county is not laid, in words', () => {
  const far = { ...site, grid: { easting: 0, northing: 0 } };
  const answer = layByWorldFile({ ...TERMS, c: 50_000_000 }, PIXELS, 'metres', far);
  expect(answer).toMatchObject({ kind: 'not laid', why: expect.stringContaining('km from the site') });
});

test('picture and grid are one step', () => {
  const edit = { edit: 'remove image', image: 'm1' } as const;
  expect(withGrid(edit, undefined, 'x')).toBe(edit);
  const grid = { edit: 'set grid', grid: { easting: 1, northing: 2 } } as const;
  expect(withGrid(edit, grid, 'north')).toEqual({
    edit: 'several',
    does: 'lay north by its world file',
    edits: [grid, edit],
  });
});

test('a world file that comes alone is for the picture picked out, the one of its name, or the only one', () => {
  const image = (id: string, name: string) =>
    ({ id, name, blob: '', ...PIXELS, placement: [1, 0, 0, 0, -1, 0], opacity: 1 }) as const;
  const two = [image('m1', 'north'), image('m2', 'south')];
  expect(imageForWorldFile(two, 'm1', 'South')?.id).toBe('m1');
  expect(imageForWorldFile(two, undefined, 'South')?.id).toBe('m2');
  expect(imageForWorldFile(two, undefined, 'other')).toBeUndefined();
  expect(imageForWorldFile(two.slice(0, 1), undefined, 'other')?.id).toBe('m1');
});
