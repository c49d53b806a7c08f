// A site set up from a picture by mouse, as far as the board file says; every figure was worked out by hand.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openSheet } from './board-page.ts';
import { mouseHand } from './counted-hand.ts';
import { openPictures } from './made-picture.ts';
import { boardFromPicture, dropFile, visitor } from './new-board.ts';
import { boardFile, savedPlan } from './saved-plan.ts';
import {
  drawBoundary,
  drawFeatures,
  drawNorth,
  expectBase,
  expectBoundary,
  expectFeatures,
  expectLaid,
  expectMarks,
  markSites,
  PICTURE,
  putBase,
  saved,
  scalePicture,
} from './site-by-hand.ts';
import { openStage } from './stage.ts';

const stage = openStage();
const pictures = openPictures();
const SURVEY = pictures.file('survey.png', PICTURE.size, [60, 110, 160]);
const AERIAL = pictures.file('aerial.png', 800, [150, 90, 60]);

/** What a file is kept under: the digest of its bytes. */
const hashOf = (file: string) => createHash('sha256').update(readFileSync(file)).digest('hex');

test('from a name and a picture to a site that is to scale, bounded, and known', async () => {
  const { context, page, troubles } = await visitor(stage, 'Ada');
  const hand = mouseHand(page);
  await boardFromPicture(hand, 'Made-up Moor', SURVEY, 'dropped');
  await scalePicture(hand);
  await drawNorth(hand);
  await drawBoundary(hand);
  await putBase(hand);
  await drawFeatures(hand);
  await markSites(hand);
  await saved(hand);

  const plan = await savedPlan(page);
  expect(plan.site).toMatchObject({ name: 'Made-up Moor', units: 'metres' });
  expect(plan.routings[0]?.loops.map(({ name }) => name)).toEqual(['Out', 'In']);
  expect(plan.site.images[0]?.blob).toBe(hashOf(SURVEY));
  expectLaid(plan);
  expectBoundary(plan);
  expectBase(plan);
  expectFeatures(plan);
  expectMarks(plan);

  await openSheet(page, 'Site');
  const slider = page.getByRole('slider', { name: /opacity/i });
  await slider.focus();
  for (let step = 0; step < 8; step++) await page.keyboard.press('ArrowLeft');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Replace survey, keeping its place' }).click(),
  ]);
  await chooser.setFiles(AERIAL);
  await page.getByText('800 × 800').waitFor();
  await saved(hand);

  const after = await savedPlan(page);
  const [old, image] = [plan.site.images[0], after.site.images[0]];
  // Eight steps of five hundredths.
  expect(image?.opacity).toBeCloseTo((old?.opacity ?? 0) - 0.4, 6);
  expect(image).toMatchObject({ id: old?.id, blob: hashOf(AERIAL), widthPixels: 800, heightPixels: 800 });
  // Half as many pixels over the same ground: each covers twice as much, and the corner stays where it was.
  const [a = 0, b = 0, c, d = 0, e = 0, f] = old?.placement ?? [];
  expect(image?.placement).toEqual([2 * a, 2 * b, c, 2 * d, 2 * e, f]);

  const file = await (await boardFile(page)).path();
  await page.goto(stage.served.address);
  await dropFile(page, '.drop', file);
  await page.getByRole('button', { name: 'Make the board' }).click();
  await page.getByRole('toolbar', { name: 'Instruments' }).waitFor();
  await saved(hand);
  expect(await savedPlan(page)).toEqual(after);
  expect(troubles).toEqual([]);
  await context.close();
});
