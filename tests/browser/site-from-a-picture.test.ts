// A site set up from a picture by mouse, as far as the board file says; every figure was worked out by hand.
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openSheet } from './board-page.ts';
import { type CountedHand, mouseHand } from './counted-hand.ts';
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

/** What a board holds besides its site: a hole, a ring about its green that follows it, and a second routing. */
async function holeRingAndCopy(hand: CountedHand): Promise<void> {
  const { page } = hand;
  await page.getByTestId('drawing').focus();
  await hand.key('d');
  await page.getByRole('region', { name: 'Draw hole' }).waitFor();
  await hand.at({ x: -300, y: 0 });
  await hand.at({ x: 50, y: 0 }, 2);
  await page.locator('.bead__button').waitFor();
  await hand.key('c');
  await page.getByRole('region', { name: 'Clearance ring' }).waitFor();
  await hand.at({ x: 50, y: 0 });
  await hand.key('Escape');
  await hand.on(page.getByRole('button', { name: /^Routing:/ }));
  await hand.on(page.getByRole('menuitem', { name: 'Copy as …' }));
  await hand.on(page.getByRole('button', { name: 'Copy', exact: true }));
  await page.getByRole('button', { name: 'Routing: Routing B' }).waitFor();
  await saved(hand);
}

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

  await holeRingAndCopy(hand);
  const whole = await savedPlan(page);
  expect(whole.site.sketches).toMatchObject([{ shape: { kind: 'ring', radius: 30, about: { part: 'green' } } }]);
  expect(whole.routings.map(({ holes }) => holes.length)).toEqual([1, 1]);

  const file = await (await boardFile(page)).path();
  await page.goto(stage.served.address);
  await dropFile(page, '.drop', file);
  // Until the file is read the page still offers a board from nothing.
  await page.getByLabel('Name of the board').waitFor();
  await page.getByRole('button', { name: 'Make the board' }).click();
  await page.getByRole('toolbar', { name: 'Instruments' }).waitFor();
  await saved(hand);
  expect(await savedPlan(page)).toEqual(whole);
  expect(troubles).toEqual([]);
  await context.close();
});
