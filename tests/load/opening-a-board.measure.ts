// How long it takes from the address of a board to its first figures, and from a press on a tab to its sheet, on the demo
// course and on busy boards; with the processor as it is and, as Chromium does it, four times as slow.
// Prints what it finds; asserts only that there was something to measure.
import { loadavg } from 'node:os';
import { demoPlan } from '@loopwright/demo';
import type { Plan } from '@loopwright/model';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { boardShown } from '../browser/board-page.ts';
import { makeBoard, openBrowser, person, type Served, serve } from '../browser/served-board.ts';
import { busyPlan } from './busy-plan.ts';
import { bringImage, drawLargeImage, overImage } from './large-image.ts';
import { whereOf } from './where-of.ts';

const TIMES = 5;
const SLOWER = 4;
/** The only sheets whose making grows with the board. */
const SHEETS = ['Card', 'Hole', 'Site', 'Findings', 'Points'] as const;

let served: Served;
let browser: Browser;
beforeAll(async () => {
  served = await serve();
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await served?.close();
});

const middleOf = (values: readonly number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

function say(what: string, values: readonly number[], budget: string): void {
  const worst = Math.max(...values);
  process.stdout.write(
    `${what}: middle ${middleOf(values).toFixed(0)} ms, worst ${worst.toFixed(0)} ms of ${values.length} (budget ${budget}), load ${loadavg()[0]?.toFixed(1)}\n`,
  );
}

async function slowDown(page: Page, times: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: times });
}

/** Milliseconds from the start of the navigation to the first length on the string of beads, nothing kept from before. */
async function opened(link: string, slower: number): Promise<number> {
  const { page, context } = await person(browser, 'about:blank', 'Ada', { serviceWorkers: 'block' });
  await page.addInitScript(() => {
    const watch = new MutationObserver(() => {
      if (!document.querySelector('.bead__length')?.textContent) return;
      watch.disconnect();
      // As soon as it can be seen.
      requestAnimationFrame(() => Object.assign(window, { figuresAt: performance.now() }));
    });
    watch.observe(document, { childList: true, subtree: true });
  });
  await slowDown(page, slower);
  await page.goto(link);
  const at = await page.waitForFunction(() => (window as unknown as { figuresAt?: number }).figuresAt);
  const took = Number(await at.jsonValue());
  await context.close();
  return took;
}

async function measureOpening(what: string, link: string): Promise<void> {
  for (const slower of [1, SLOWER]) {
    const took: number[] = [];
    for (let time = 0; time < TIMES; time++) took.push(await opened(link, slower));
    say(`opening ${what} to its first figures${slower > 1 ? `, processor ${slower} × slower` : ''}`, took, '2000 ms');
    expect(middleOf(took)).toBeGreaterThan(0);
  }
}

test('opening a board to its first figures', async () => {
  await measureOpening('the demo course', await makeBoard(served, demoPlan()));
  const image = await drawLargeImage(browser);
  const busy = await makeBoard(served, overImage(busyPlan(), image));
  await bringImage(whereOf(busy), image);
  await measureOpening('27 holes, 200 features and an image of 60 megapixels', busy);
});

/** Milliseconds from the press on a tab to the picture after the sheet is there; its script was fetched before. */
const sheetShown = (page: Page, title: string) =>
  page.evaluate(async (wanted) => {
    const tabs = [...document.querySelectorAll<HTMLElement>('[role=tab]')];
    const from = performance.now();
    tabs.find((tab) => tab.dataset.title === wanted)?.click();
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    return performance.now() - from;
  }, title);

/** Milliseconds from a key to the picture after it, in a field of the sheet that is open. */
async function typed(page: Page, label: RegExp): Promise<readonly number[]> {
  const field = page.locator('.drawer').getByRole('textbox', { name: label }).first();
  await field.focus();
  await field.evaluate((node) => {
    const waits: number[] = [];
    Object.assign(window, { waits });
    node.addEventListener('keydown', ({ timeStamp }) => {
      requestAnimationFrame(() => setTimeout(() => waits.push(performance.now() - timeStamp)));
    });
  });
  for (const letter of 'Old mill pond') {
    await page.keyboard.press(letter === ' ' ? 'Space' : letter);
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))));
  }
  return page.evaluate(() => (window as unknown as { waits: number[] }).waits);
}

async function measureSheets(what: string, plan: Plan): Promise<void> {
  const { page, context } = await person(browser, await makeBoard(served, plan), 'Ada');
  await boardShown(page);
  await page.locator('.bead__button').first().click();
  for (const title of SHEETS) {
    await sheetShown(page, title);
    await page.locator('.drawer__wait').waitFor({ state: 'detached' });
    const took: number[] = [];
    for (let time = 0; time < TIMES; time++) {
      await sheetShown(page, 'What changed');
      took.push(await sheetShown(page, title));
    }
    say(`the sheet '${title}' of ${what}`, took, '200 ms');
    if (title === 'Hole') say(`a letter typed on it`, await typed(page, /name/i), '50 ms');
  }
  await context.close();
}

test('opening the sheets of a busy board', async () => {
  await measureSheets('27 holes and 200 features', busyPlan());
  await measureSheets('27 holes and 2,000 features', busyPlan(2000));
});
