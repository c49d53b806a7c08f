// Holes changed by mouse: each change is what was worked out by hand, one step, named, and comes back whole.
import type { Plan, SitePoint } from '@loopwright/model';
import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { beadLength, boardShown, drag, movedBy, pixelOf, playingOrder, savedWords, spareHoles } from './board-page.ts';
import { bead, fourHoles, GREEN, holeIn, LAID, NAMES, undoName } from './four-holes.ts';
import { savedPlan } from './saved-plan.ts';
import { makeBoard, person } from './served-board.ts';
import { expectNear } from './site-by-hand.ts';
import { openStage } from './stage.ts';

const WITHIN = { timeout: 10_000, interval: 20 };
/** Metres: a pixel or two at the scale these boards are shown in. */
const HAND = 2.5;

const stage = openStage();
let context: BrowserContext;
let page: Page;
let troubles: readonly string[];
let before: Plan;

beforeEach(async () => {
  ({ context, page, troubles } = await person(stage.browser, await makeBoard(stage.served, fourHoles()), 'Ada'));
  await boardShown(page);
  await page.getByRole('toolbar', { name: 'Instruments' }).waitFor();
  await expect.poll(() => savedWords(page), WITHIN).toContain('saved on the server');
  before = await savedPlan(page);
});
afterEach(async () => {
  expect(troubles).toEqual([]);
  await context.close();
});

/** Pixels to a metre. */
async function scaleNow(): Promise<number> {
  const view = await page.getByTestId('drawing').getAttribute('data-view');
  return Number(view?.split(' ')[0]);
}

async function undo(): Promise<void> {
  await page.keyboard.press('Control+z');
}

const along = (from: SitePoint, to: SitePoint, share: number): SitePoint => ({
  x: from.x + (to.x - from.x) * share,
  y: from.y + (to.y - from.y) * share,
});

test('a dogleg goes in by the leg, is moved, and comes out with Alt', async () => {
  const { tee, green } = LAID.one;
  await bead(page, 'one').click();
  // The grip lies in the middle of the leg, or a little before it where the number stands in the middle.
  const grip = along(tee, green, 0.38);
  await drag(page, grip, movedBy(grip, 0, 80));
  await expect.poll(() => undoName(page), WITHIN).toBe('turn added to hole 1');
  const [turn] = holeIn(await savedPlan(page), 'one').turnPoints;
  if (!turn) throw new Error('no turn point');
  expectNear(turn.at, movedBy(grip, 0, 80), 30);
  expect(Math.abs(turn.at.y - (grip.y + 80))).toBeLessThan(HAND);
  // Pythagoras, over the turn.
  const legs = [tee, turn.at, green].map(({ x, y }, index, all) =>
    index === 0 ? 0 : Math.hypot(x - (all[index - 1]?.x ?? 0), y - (all[index - 1]?.y ?? 0)),
  );
  expect(await beadLength(page, 'one')).toBe(Math.round(legs.reduce((sum, leg) => sum + leg, 0)));

  await drag(page, turn.at, movedBy(turn.at, 40, 0));
  await expect.poll(() => undoName(page), WITHIN).toMatch(/^move of turn/);
  const moved = holeIn(await savedPlan(page), 'one').turnPoints[0];
  expectNear(moved?.at, movedBy(turn.at, 40, 0), HAND);

  const place = await pixelOf(page, moved?.at ?? turn.at);
  await page.keyboard.down('Alt');
  await page.mouse.click(place.x, place.y);
  await page.keyboard.up('Alt');
  await expect.poll(() => undoName(page), WITHIN).toBe('turn taken out of hole 1');
  expect(await beadLength(page, 'one')).toBe(360);
  for (let step = 0; step < 3; step++) await undo();
  await expect.poll(() => undoName(page), WITHIN).toBe('Nothing to undo');
  expect(await savedPlan(page)).toEqual(before);
});

test('the grip beyond a green lengthens the hole along its line and nowhere else', async () => {
  const { green } = LAID.one;
  await bead(page, 'one').click();
  const grip = movedBy(green, GREEN.length / 2 + 30 / (await scaleNow()), 0);
  await drag(page, grip, movedBy(grip, 40, 35));
  await expect.poll(() => undoName(page), WITHIN).toBe('lengthening of hole 1');
  const after = holeIn(await savedPlan(page), 'one').green.centre;
  expectNear(after, movedBy(green, 40, 0), HAND);
  expect(after.y).toBe(green.y);
  expect(await beadLength(page, 'one')).toBe(Math.round(360 + after.x - green.x));
  await undo();
  await expect.poll(() => beadLength(page, 'one'), WITHIN).toBe(360);
});

test('the handles of a green: both edges go with the one that is dragged, and the axis turns', async () => {
  const { green } = LAID.one;
  await bead(page, 'one').click();
  const middle = await pixelOf(page, green);
  await page.mouse.move(middle.x, middle.y);
  for (let notch = 0; notch < 12 && (await scaleNow()) < 3; notch++) {
    const scale = await scaleNow();
    await page.mouse.wheel(0, -240);
    await expect.poll(scaleNow, WITHIN).toBeGreaterThan(scale);
  }
  const scale = await scaleNow();
  // It lies east: its length is east and west of the middle, its width north and south.
  const east = movedBy(green, GREEN.length / 2, 0);
  await drag(page, east, movedBy(east, 10, 0));
  await expect.poll(() => undoName(page), WITHIN).toBe('shape of green 1');
  expect(holeIn(await savedPlan(page), 'one').green.length).toBeCloseTo(50, -0.3);

  const south = movedBy(green, 0, -GREEN.width / 2);
  await drag(page, south, movedBy(south, 0, -4));
  await expect.poll(async () => holeIn(await savedPlan(page), 'one').green.width, WITHIN).toBeCloseTo(32, -0.3);

  // Behind the green; brought to due north of it the axis points south.
  const reach = 25 + 30 / scale;
  await drag(page, movedBy(green, -reach, 0), movedBy(green, 0, reach));
  const { bearing, centre } = holeIn(await savedPlan(page), 'one').green;
  expect(Math.cos(bearing)).toBeCloseTo(-1, 2);
  expect(centre).toEqual(green);
  for (let step = 0; step < 3; step++) await undo();
  await expect.poll(() => undoName(page), WITHIN).toBe('Nothing to undo');
});

test('several holes go together, by one step', async () => {
  await bead(page, 'two').click();
  await bead(page, 'three').click({ modifiers: ['Shift'] });
  const line = along(LAID.two.tee, LAID.two.green, 0.3);
  await drag(page, line, movedBy(line, 40, -60));
  await expect.poll(() => undoName(page), WITHIN).toBe('move of 2 holes');
  const after = await savedPlan(page);
  for (const name of ['two', 'three'] as const) {
    expectNear(holeIn(after, name).tees.back, movedBy(LAID[name].tee, 40, -60), HAND);
    expectNear(holeIn(after, name).green.centre, movedBy(LAID[name].green, 40, -60), HAND);
  }
  expect(holeIn(after, 'one')).toEqual(holeIn(before, 'one'));
  await undo();
  await expect.poll(() => undoName(page), WITHIN).toBe('Nothing to undo');
  expect(await savedPlan(page)).toEqual(before);
});

test('two holes exchange corridors from the menu at the pointer', async () => {
  const line = await pixelOf(page, along(LAID.one.tee, LAID.one.green, 0.25));
  await page.mouse.click(line.x, line.y, { button: 'right' });
  await page.getByRole('menuitem', { name: 'Exchange corridors with …' }).click();
  await page
    .getByRole('menu', { name: 'Exchange corridors with …' })
    .getByRole('menuitem', { name: /Hole 3/ })
    .click();
  await expect.poll(() => undoName(page), WITHIN).toBe('exchange of corridors 1 and 3');
  expect(await playingOrder(page)).toEqual(NAMES);
  const after = await savedPlan(page);
  expect(holeIn(after, 'one')).toMatchObject({ tees: { back: LAID.three.tee }, green: { centre: LAID.three.green } });
  expect(holeIn(after, 'three')).toMatchObject({ tees: { back: LAID.one.tee }, green: { centre: LAID.one.green } });
  expect([await beadLength(page, 'one'), await beadLength(page, 'three')]).toEqual([350, 360]);
});

test('a loop is split after a hole and joined again; a hole goes out, and back to another place', async () => {
  const loops = async () => (await savedPlan(page)).routings[0]?.loops.map(({ holes }) => holes.length);
  await bead(page, 'two').click();
  await page.getByRole('button', { name: 'What to do with hole 2' }).click();
  await page.getByRole('menuitem', { name: 'Split the loop after it' }).click();
  await expect.poll(() => undoName(page), WITHIN).toBe('split of loop ‘Out’');
  expect(await loops()).toEqual([2, 2, 0]);

  await page.getByRole('button', { name: 'What to do with the loop Out' }).click();
  await page.getByRole('menuitem', { name: /^Join with/ }).click();
  await expect.poll(() => undoName(page), WITHIN).toBe('join to loop ‘Out’');
  expect((await loops())?.[0]).toBe(4);
  expect(await playingOrder(page)).toEqual(NAMES);

  await bead(page, 'one').focus();
  await page.keyboard.press('Delete');
  await expect.poll(() => undoName(page), WITHIN).toBe('taking out of spare 1');
  expect(await spareHoles(page)).toEqual(['one']);
  await bead(page, 'three').click();
  // The first of the string is gone, so the third is called the second.
  await page.getByRole('button', { name: 'What to do with hole 2' }).click();
  await page.getByRole('menuitem', { name: 'Insert a spare hole after it …' }).click();
  await page.getByRole('menu', { name: 'Insert a spare hole after it …' }).getByRole('menuitem').first().click();
  await expect.poll(() => playingOrder(page), WITHIN).toEqual(['two', 'three', 'one', 'four']);
  expect(await spareHoles(page)).toEqual([]);
});

test('what was tried is put back: all of mine since a chosen step, in one', async () => {
  await drag(page, LAID.two.green, movedBy(LAID.two.green, 30, 0));
  await expect.poll(() => undoName(page), WITHIN).toBe('move of green 2');
  const kept = await savedPlan(page);
  await drag(page, LAID.three.green, movedBy(LAID.three.green, 0, 30));
  await expect.poll(() => undoName(page), WITHIN).toBe('move of green 3');
  await bead(page, 'four').focus();
  await page.keyboard.press('Delete');
  await expect.poll(() => spareHoles(page), WITHIN).toEqual(['four']);
  await page.getByRole('button', { name: 'Put back what was tried' }).click();
  await page.getByRole('menuitem', { name: /^move of green 3/ }).click();
  await expect.poll(() => spareHoles(page), WITHIN).toEqual([]);
  expect(await savedPlan(page)).toEqual(kept);
  expect(await undoName(page)).toBe('putting back of 2 steps');
  await undo();
  await expect.poll(() => spareHoles(page), WITHIN).toEqual(['four']);
});
