// The board for somebody who does not see the drawing: told what changes, and led from the table to where it is changed.
import { demoPlan } from '@loopwright/demo';
import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { boardShown, drag, movedBy, openSheet, placeOf } from './board-page.ts';
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
  ({ context, page } = await person(stage.browser, await makeBoard(stage.served, PLAN), 'Ada'));
  await boardShown(page);
});
afterEach(async () => {
  await context.close();
});

const heard = async () => (await page.getByTestId('findings-heard').textContent()) ?? '';
const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');

async function openList(title: RegExp): Promise<void> {
  await openSheet(page, 'Holes and points');
  await page.getByRole('button', { name: title }).last().click();
}

test('findings gained and gone are told after a drag and after undo', async () => {
  await drag(page, GREEN, movedBy(GREEN, -20, 90));
  await expect.poll(heard, WITHIN).toMatch(/findings? gained: /);
  const before = await heard();
  await page.keyboard.press('Control+z');
  await expect.poll(heard, WITHIN).not.toBe(before);
  expect(await heard()).toMatch(/ gone: /);
});

test('a thing in the table opens on the sheet of the site, a walk on the sheet of its hole, with the keyboard there', async () => {
  await openList(/^On the land/);
  await page.getByRole('button', { name: /^Alder wood/ }).press('Enter');
  await expect.poll(focused, WITHIN).toMatch(/^alder wood/i);
  await openList(/^Walks/);
  await page
    .locator('.index')
    .getByRole('button', { name: /^Walk from green 3/ })
    .press('Enter');
  await expect.poll(focused, WITHIN).toBe('hole 3');
});

test('a place typed in the table moves the thing', async () => {
  await openList(/^On the land/);
  const east = page.getByRole('textbox', { name: 'Clubhouse, metres east' });
  const was = Number(await east.inputValue());
  await east.fill(String(was + 12));
  await east.press('Enter');
  await expect.poll(() => east.inputValue(), WITHIN).toBe((was + 12).toFixed(1));
  await page.getByTestId('drawing').focus();
  await page.keyboard.press('Control+z');
  await expect.poll(() => east.inputValue(), WITHIN).toBe(was.toFixed(1));
});

test('keys of one letter can be turned off', async () => {
  const hidden = async () => page.getByRole('button', { name: 'Hide findings' }).getAttribute('aria-pressed');
  await page.getByTestId('drawing').focus();
  await page.keyboard.press('h');
  await expect.poll(hidden, WITHIN).toBe('true');
  await page.keyboard.press('h');
  await expect.poll(hidden, WITHIN).toBe('false');
  await page.keyboard.press('?');
  await page.getByRole('radio', { name: 'off', exact: true }).click();
  await page.keyboard.press('Escape');
  await page.getByTestId('drawing').focus();
  await page.keyboard.press('h');
  await page.keyboard.press('?');
  await page.keyboard.press('t');
  expect(await hidden()).toBe('false');
  expect(await page.getByRole('dialog').count()).toBe(0);
  expect(await page.getByRole('tab', { name: 'Card', exact: true }).count()).toBe(1);
});
