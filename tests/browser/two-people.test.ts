// Two people with browsers of their own on one board, through the built server.
import { demoPlan } from '@loopwright/demo';
import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import {
  beadLength,
  boardShown,
  drag,
  movedBy,
  openSheet,
  pixelOf,
  placeOf,
  playingOrder,
  savedWords,
  spareHoles,
  takeAndMove,
} from './board-page.ts';
import { makeBoard, person } from './served-board.ts';
import { openStage } from './stage.ts';

const PLAN = demoPlan();
const FIRST = PLAN.routings[0]?.loops[0]?.holes ?? [];
const [, SECOND_HOLE = '', , FOURTH_HOLE = ''] = FIRST;
const WITHIN = { timeout: 10_000, interval: 20 };

const stage = openStage();
let contexts: BrowserContext[] = [];
let troubles: (readonly string[])[] = [];
let ada: Page;
let ben: Page;

beforeEach(async () => {
  const link = await makeBoard(stage.served, PLAN);
  const [first, second] = [await person(stage.browser, link, 'Ada'), await person(stage.browser, link, 'Ben')];
  contexts = [first.context, second.context];
  troubles = [first.troubles, second.troubles];
  ada = first.page;
  ben = second.page;
  await Promise.all([boardShown(ada), boardShown(ben)]);
});
afterEach(async () => {
  await Promise.all(contexts.map((context) => context.close()));
  expect(troubles.flat()).toEqual([]);
});

test('while one drags a green, the other sees length and consequences change, before anything is dropped', async () => {
  const green = placeOf(PLAN, FOURTH_HOLE, 'green');
  const before = await beadLength(ben, FOURTH_HOLE);
  await openSheet(ben, 'What changed');

  await takeAndMove(ada, green, movedBy(green, 5, 60));
  await expect.poll(() => beadLength(ben, FOURTH_HOLE), WITHIN).not.toBe(before);
  await expect.poll(() => ben.getByText('Ada is dragging').count(), WITHIN).toBe(1);
  // The last move of the hand comes over too, though moves are sent no oftener than 25 times a second.
  await expect.poll(() => beadLength(ben, FOURTH_HOLE), WITHIN).toBe(await beadLength(ada, FOURTH_HOLE));

  await ada.keyboard.press('Escape');
  await ada.mouse.up();
  await expect.poll(() => beadLength(ben, FOURTH_HOLE), WITHIN).toBe(before);
  expect(await beadLength(ada, FOURTH_HOLE)).toBe(before);
});

test('a drop is one step: written for both, and one undo takes it back for both', async () => {
  const green = placeOf(PLAN, FOURTH_HOLE, 'green');
  const before = await beadLength(ben, FOURTH_HOLE);
  await drag(ada, green, movedBy(green, 5, 60));
  await expect.poll(() => beadLength(ben, FOURTH_HOLE), WITHIN).not.toBe(before);
  await expect.poll(() => savedWords(ada), WITHIN).toContain('saved on the server');

  await ada.keyboard.press('Control+z');
  await expect.poll(() => beadLength(ben, FOURTH_HOLE), WITHIN).toBe(before);
  await ada.keyboard.press('Control+y');
  await expect.poll(() => beadLength(ben, FOURTH_HOLE), WITHIN).not.toBe(before);
});

test('two people who drag two ends of one hole at once end with both moves', async () => {
  const tee = placeOf(PLAN, SECOND_HOLE, 'tee:back');
  const green = placeOf(PLAN, SECOND_HOLE, 'green');
  await takeAndMove(ada, tee, movedBy(tee, 0, 30));
  await takeAndMove(ben, green, movedBy(green, 10, -40));
  const both = { tee: await pixelOf(ada, movedBy(tee, 0, 30)), green: await pixelOf(ben, movedBy(green, 10, -40)) };
  await ben.mouse.up();
  await ada.mouse.up();

  await openSheet(ada, 'Holes and points');
  await openSheet(ben, 'Holes and points');
  await expect.poll(() => beadLength(ada, SECOND_HOLE), WITHIN).toBe(await beadLength(ben, SECOND_HOLE));
  await ada.mouse.click(both.tee.x, both.tee.y);
  await ben.mouse.click(both.green.x, both.green.y);
  const north = (page: Page, what: RegExp) => page.getByLabel(what).first().inputValue().then(Number);
  await expect
    .poll(() => north(ben, /Tee.*metres north|Back tee.*metres north/i), WITHIN)
    .toBeCloseTo(tee.y + 30, -0.5);
  await expect.poll(() => north(ada, /green.*metres north/i), WITHIN).toBeCloseTo(green.y - 40, -0.5);
});

test('both renumber at once: no hole is lost or doubled, and both see one order', async () => {
  const order = await playingOrder(ada);
  const bead = (page: Page, hole: string) => page.locator(`li[data-hole="${hole}"] .bead__button`);
  const moveDown = async (page: Page, hole: string) => {
    await bead(page, hole).focus();
    for (const key of ['Enter', 'ArrowDown', 'ArrowDown', 'Enter']) await page.keyboard.press(key);
  };
  await Promise.all([moveDown(ada, order[1] ?? ''), moveDown(ben, order[2] ?? '')]);
  await expect.poll(async () => JSON.stringify(await playingOrder(ada)) !== JSON.stringify(order), WITHIN).toBe(true);
  await expect
    .poll(async () => JSON.stringify(await playingOrder(ada)) === JSON.stringify(await playingOrder(ben)), WITHIN)
    .toBe(true);
  expect([...(await playingOrder(ada))].sort()).toEqual([...order].sort());
});

test('a hole taken out lies in the spare tray of both, and comes back', async () => {
  const hole = (await playingOrder(ada))[4] ?? '';
  await ada.locator(`li[data-hole="${hole}"] .bead__button`).focus();
  await ada.keyboard.press('Delete');
  await expect.poll(() => spareHoles(ben), WITHIN).toContain(hole);
  expect(await playingOrder(ben)).not.toContain(hole);
  await ada.keyboard.press('Control+z');
  await expect.poll(() => playingOrder(ben), WITHIN).toContain(hole);
});

test('each sees who else is there, and where the other points', async () => {
  await expect.poll(() => ada.getByLabel(/Ben/).count(), WITHIN).toBeGreaterThan(0);
  const { x, y } = await pixelOf(ben, placeOf(PLAN, FOURTH_HOLE, 'green'));
  await ben.mouse.move(x, y);
  await expect.poll(() => ada.getByTestId('pointers').getByTitle('Ben').count(), WITHIN).toBe(1);
});
