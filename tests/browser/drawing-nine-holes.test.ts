// A site from a picture and nine holes on it: by mouse, by touch, and by keyboard alone.
import type { Site, SitePoint } from '@loopwright/model';
import { expect, test } from 'vitest';
import { type CountedHand, mouseHand, touchHand } from './counted-hand.ts';
import { openPictures } from './made-picture.ts';
import { boardFromPicture, pictureLaid, visitor } from './new-board.ts';
import { beadLengths, cardTotal, expectDrawn, HOLES, nineDrawn, TYPED_LENGTHS } from './nine-holes.ts';
import { savedPlan } from './saved-plan.ts';
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
import { expectTask } from './tasks-page.ts';

const stage = openStage();
const pictures = openPictures();
const SURVEY = pictures.file('survey.png', PICTURE.size, [60, 110, 160]);

/** What a step takes. */
async function counted(hand: CountedHand, step: (hand: CountedHand) => Promise<void>): Promise<number> {
  const before = hand.count();
  await step(hand);
  return hand.count() - before;
}

async function setUpSite(hand: CountedHand, by: 'mouse' | 'touch'): Promise<void> {
  expectTask('scale a picture', by, await counted(hand, scalePicture));
  await drawNorth(hand);
  expectTask('draw a boundary of four corners', by, await counted(hand, drawBoundary));
  await putBase(hand);
  await drawFeatures(hand);
  await markSites(hand);
}

async function drawNine(hand: CountedHand, by: 'mouse' | 'touch'): Promise<void> {
  const start = hand.count();
  await hand.on(hand.page.getByRole('toolbar').getByRole('button', { name: 'Draw hole' }));
  // Points shall lie where they are pressed: nothing near pulls them.
  await hand.on(hand.page.getByRole('button', { name: 'Snap', exact: true }));
  for (const [index, points] of HOLES.entries()) {
    const before = hand.count();
    for (const point of points) await hand.at(point, point === points.at(-1) ? 2 : 1);
    if (index === 1) expectTask('draw a par 3', by, hand.count() - before);
    if (index === 4) expectTask('draw a hole with a turn', by, hand.count() - before);
  }
  expectTask('draw nine holes', by, hand.count() - start);
  await nineDrawn(hand.page);
}

async function expectSiteAndHoles(hand: CountedHand): Promise<void> {
  const plan = await savedPlan(hand.page);
  expectLaid(plan);
  expectBoundary(plan);
  expectBase(plan);
  expectFeatures(plan);
  expectMarks(plan);
  // A pixel is two and a half metres, and a leg has two ends.
  await expectDrawn(hand.page, plan, { within: 6 });
}

test('by mouse: a click for tee and turn, two for the green', async () => {
  const { context, page, troubles } = await visitor(stage, 'Mouse');
  const hand = mouseHand(page);
  await boardFromPicture(hand, 'Made-up Moor', SURVEY, 'dropped');
  await setUpSite(hand, 'mouse');
  expectTask('set up a site', 'mouse', hand.count());
  await drawNine(hand, 'mouse');
  await expectSiteAndHoles(hand);
  expect(troubles).toEqual([]);
  await context.close();
});

test('by touch: a tap for tee and turn, two for the green', async () => {
  const { context, page, troubles } = await visitor(stage, 'Finger', { hasTouch: true });
  const hand = touchHand(page);
  await boardFromPicture(hand, 'Made-up Moor', SURVEY, 'chosen');
  await setUpSite(hand, 'touch');
  expectTask('set up a site', 'touch', hand.count());
  await drawNine(hand, 'touch');
  await expectSiteAndHoles(hand);
  expect(troubles).toEqual([]);
  await context.close();
});

/** The new board from the start page: its name, metres, the picture chosen; Enter in the name makes it. */
async function boardByKeys(hand: CountedHand): Promise<void> {
  const { page } = hand;
  await hand.keyTo('Tab', /Name of the site/);
  await hand.type('Made-up Moor');
  await hand.keyTo('Tab', /Yards/);
  await hand.key('ArrowRight');
  await hand.key(' ');
  await hand.keyTo('Tab', /Choose a picture/);
  const chooser = page.waitForEvent('filechooser');
  await hand.key('Enter');
  await (await chooser).setFiles(SURVEY);
  await page.getByText('laid on the board as soon as it is open').waitFor();
  await hand.keyTo('Tab', /Make the board/);
  await hand.key('Enter');
  await pictureLaid(page);
}

/** While a pixel is 0.75 m thirty presses east are 300 m, 400 pixels: told that they are 400 m, a pixel is a metre. */
async function scaleByKeys(hand: CountedHand): Promise<void> {
  const note = hand.page.getByRole('complementary', { name: 'Not to scale yet' });
  await hand.keyTo('Shift+Tab', /^Give a known distance/);
  await hand.key('Enter');
  await hand.key('ArrowUp');
  await hand.key(' ');
  for (let step = 0; step < 30; step++) await hand.key('ArrowRight');
  await hand.key(' ');
  await hand.type('400');
  await hand.key('Enter');
  await note.waitFor({ state: 'detached' });
}

async function typed(hand: CountedHand, words: string): Promise<void> {
  await hand.type(words);
  await hand.key('Enter');
}

/** From where the cross stands, in tens of metres, and a press. */
async function crossBy(hand: CountedHand, east: number, north: number): Promise<void> {
  for (let step = 0; step < Math.abs(east); step++) await hand.key(east > 0 ? 'ArrowRight' : 'ArrowLeft');
  for (let step = 0; step < Math.abs(north); step++) await hand.key(north > 0 ? 'ArrowUp' : 'ArrowDown');
  await hand.key(' ');
}

/** Corners by the cross: 600 m east, 500 m north, 600 m back; then a base at a typed place, and a mark by the cross. */
async function landByKeys(hand: CountedHand): Promise<void> {
  await hand.key('o');
  await hand.key('ArrowUp');
  await hand.key(' ');
  await crossBy(hand, 60, 0);
  await crossBy(hand, 0, 50);
  await crossBy(hand, -60, 0);
  await hand.key('Enter');
  await hand.key('Escape');
  await hand.keyTo('Shift+Tab', /^(Hide|Show) the names/);
  await hand.keyTo('ArrowUp', /^Base/);
  await hand.key('Enter');
  await typed(hand, '(-560, -400)');
  await hand.key('Escape');
  await hand.key('m');
  await typed(hand, '(120.5, -50)');
  await hand.key('Escape');
}

function expectCrossLand({ boundary, bases, marks }: Site): void {
  const [first, ...others] = boundary?.outlines[0] ?? [];
  if (!first) throw new Error('no boundary');
  expect(others).toEqual([
    { x: first.x + 600, y: first.y },
    { x: first.x + 600, y: first.y + 500 },
    { x: first.x, y: first.y + 500 },
  ]);
  expect(bases).toMatchObject([{ name: 'Clubhouse', apron: { x: -560, y: -400 } }]);
  expect(marks).toMatchObject([{ kind: 'green site', at: { x: 120.5, y: -50 }, verdict: 'natural' }]);
}

/** Nine holes with the legs typed; tees are found with the cross, which goes on from the last green. */
async function drawNineByKeys(hand: CountedHand): Promise<void> {
  const start = hand.count();
  await hand.key('d');
  for (const [index, [tee, ...legs]] of HOLES.entries()) {
    const before = hand.count();
    const last = HOLES[index - 1]?.at(-1);
    if (!tee) throw new Error('a hole without a tee');
    if (last) {
      await hand.key('ArrowUp');
      await crossBy(hand, Math.round((tee.x - last.x) / 10), Math.round((tee.y - last.y) / 10));
    } else await typed(hand, `(${tee.x}, ${tee.y})`);
    for (const [leg, point] of legs.entries()) await typed(hand, legBetween(legs[leg - 1] ?? tee, point));
    await hand.key('Enter');
    if (index === 1) expectTask('draw a par 3', 'keyboard', hand.count() - before);
    if (index === 4) expectTask('draw a hole with a turn', 'keyboard', hand.count() - before);
  }
  expectTask('draw nine holes', 'keyboard', hand.count() - start);
}

/** As it is typed: whole metres, and whole degrees from north. */
function legBetween(from: SitePoint, to: SitePoint): string {
  const [east, north] = [to.x - from.x, to.y - from.y];
  const degrees = (Math.round((Math.atan2(east, north) * 180) / Math.PI) + 360) % 360;
  return `${Math.round(Math.sqrt(east * east + north * north))}@${degrees}`;
}

test('by keyboard alone: lengths and bearings typed, places found with the arrows', async () => {
  const { context, page, troubles } = await visitor(stage, 'Keys');
  const hand = mouseHand(page);
  await boardByKeys(hand);
  expectTask('scale a picture', 'keyboard', await counted(hand, scaleByKeys));
  await landByKeys(hand);
  expectTask('set up a site', 'keyboard', hand.count());
  await saved(hand);
  const { site } = await savedPlan(page);
  const [a, b, , d, e] = site.images[0]?.placement ?? [];
  for (const [index, value] of [1, 0, 0, -1].entries()) expect([a, b, d, e][index]).toBeCloseTo(value, 9);
  expectCrossLand(site);

  await page.getByTestId('drawing').focus();
  await drawNineByKeys(hand);
  await nineDrawn(page);
  expect(await beadLengths(page)).toEqual(TYPED_LENGTHS);
  expect(await cardTotal(page, 'Out')).toBe(2861);
  expect(troubles).toEqual([]);
  await context.close();
});
