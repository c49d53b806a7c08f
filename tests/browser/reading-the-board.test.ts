// One person with the board: before and after, findings and what is decided about them, limits, undo by words.
import { demoPlan } from '@loopwright/demo';
import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { beadLength, boardShown, drag, movedBy, openSheet, placeOf, savedWords, takeAndMove } from './board-page.ts';
import { makeBoard, person } from './served-board.ts';
import { openStage } from './stage.ts';

const PLAN = demoPlan();
const HOLE = PLAN.routings[0]?.loops[0]?.holes[3] ?? '';
const GREEN = placeOf(PLAN, HOLE, 'green');
const WITHIN = { timeout: 10_000, interval: 20 };

const stage = openStage();
let context: BrowserContext;
let page: Page;
beforeEach(async () => {
  const link = await makeBoard(stage.served, PLAN);
  ({ context, page } = await person(stage.browser, link, 'Ada'));
  await boardShown(page);
  await expect.poll(() => savedWords(page), WITHIN).toContain('saved on the server');
});
afterEach(async () => {
  await context.close();
});

test('holding B shows the state before, letting go the state now', async () => {
  const before = await beadLength(page, HOLE);
  await drag(page, GREEN, movedBy(GREEN, 5, 60));
  const after = await beadLength(page, HOLE);
  expect(after).not.toBe(before);
  await page.getByTestId('drawing').focus();
  await page.keyboard.down('b');
  await expect.poll(() => beadLength(page, HOLE), WITHIN).toBe(before);
  await page.keyboard.up('b');
  await expect.poll(() => beadLength(page, HOLE), WITHIN).toBe(after);
});

test('a drag tells its worst at the pointer and all of it in the drawer', async () => {
  await openSheet(page, 'What changed');
  await takeAndMove(page, GREEN, movedBy(GREEN, -20, 90));
  await expect.poll(() => page.getByText('You are dragging').count(), WITHIN).toBe(1);
  await expect.poll(() => page.locator('.badge').count(), WITHIN).toBe(1);
  expect(await page.getByRole('heading', { name: /^Green 4 moved/ }).count()).toBe(1);
  await page.mouse.up();
  await expect.poll(() => page.locator('.badge').count(), WITHIN).toBe(0);
});

test('a decision about a finding is kept, and reopened by hand', async () => {
  await openSheet(page, 'Findings');
  const finding = page.locator('.finding').first();
  await finding.getByRole('button', { name: /^Decide about/ }).click();
  await page.getByRole('textbox').last().fill('the surveyor, in May');
  await page.getByRole('button', { name: 'Keep the decision' }).click();
  const decided = page.locator('.finding--decided').first();
  await decided.waitFor();
  expect(await decided.textContent()).toContain('the surveyor, in May');
  await decided.getByRole('button', { name: /^Reopen/ }).click();
  await expect.poll(() => page.locator('.finding--decided').count(), WITHIN).toBe(0);
});

test('where somebody can be hurt, nothing offers to keep the danger on purpose', async () => {
  await openSheet(page, 'Findings');
  const stop = page.locator('.finding').filter({ hasText: 'stop' }).first();
  await stop.getByRole('button', { name: /^Decide about/ }).click();
  const kinds = await page.locator('.disposition__kind').allTextContents();
  expect(kinds.length).toBeGreaterThan(1);
  expect(kinds.join(' ')).not.toContain('on purpose');
});

test('one press hides every finding, one more shows them', async () => {
  await openSheet(page, 'Findings');
  const marks = page.locator('.bead__finding .severity');
  await expect.poll(() => marks.count(), WITHIN).toBeGreaterThan(0);
  await page.getByTestId('drawing').focus();
  await page.keyboard.press('h');
  await expect.poll(() => marks.count(), WITHIN).toBe(0);
  await page.keyboard.press('h');
  await expect.poll(() => marks.count(), WITHIN).toBeGreaterThan(0);
});

test('a changed limit changes the findings of the board, and goes back to its default', async () => {
  await openSheet(page, 'Findings');
  const longWalk = () =>
    page
      .locator('.finding')
      .filter({ hasText: /Walk 13 → 14 is long/ })
      .count();
  await expect.poll(longWalk, WITHIN).toBe(1);
  await openSheet(page, 'Limits');
  const rows = page.locator('.limit').filter({ hasText: /green to (the )?next tee/i });
  await rows.first().waitFor();
  expect(await rows.count()).toBeGreaterThan(1);
  for (const row of await rows.all()) {
    const field = row.getByRole('textbox');
    await field.fill('500');
    await field.press('Enter');
  }
  await openSheet(page, 'Findings');
  await expect.poll(longWalk, WITHIN).toBe(0);
  await openSheet(page, 'Limits');
  for (const row of await rows.all()) await row.getByRole('button', { name: /Back to the default/ }).click();
  await openSheet(page, 'Findings');
  await expect.poll(longWalk, WITHIN).toBe(1);
});

test('the keyboard moves what the pointer moves', async () => {
  const before = await beadLength(page, HOLE);
  const surface = page.getByTestId('drawing');
  await surface.focus();
  for (let hole = 0; hole < 4; hole++) await page.keyboard.press(']');
  await page.keyboard.press('p');
  for (let nudge = 0; nudge < 6; nudge++) await page.keyboard.press('Shift+ArrowUp');
  await expect.poll(() => beadLength(page, HOLE), WITHIN).not.toBe(before);
  await page.keyboard.press('Control+z');
});
