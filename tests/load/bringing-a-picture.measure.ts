// A picture of 60 megapixels on its way to a board, as PNG and as JPEG: whether the page is held up, whether progress
// moves, how soon 'Cancel' is obeyed, and what memory the page has taken when the picture lies there.
// Prints what it finds; asserts only that the picture came and that its import could be called off.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoPlan } from '@loopwright/demo';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { boardShown } from '../browser/board-page.ts';
import { openPictures } from '../browser/made-picture.ts';
import { dropFile, pictureLaid } from '../browser/new-board.ts';
import { makeBoard, openBrowser, person, type Served, serve } from '../browser/served-board.ts';
import { drawLargeImage, pictureSeen } from './large-image.ts';
import { longTasksOf, watchLongTasks } from './long-tasks.ts';

/** Square, and just under the limit of 60 megapixels. */
const SIDE = 7_740;
const NONE_YET = { images: [] };

const pictures = openPictures();
let folder: string;
let served: Served;
let browser: Browser;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'loopwright-large-'));
  served = await serve();
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await served?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Megabytes that scripts of the page hold, pictures in workers not counted. */
async function heapOf(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page);
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  await session.detach();
  return usedSize / 1e6;
}

/** Notes each width the progress has shown. */
const watchProgress = (page: Page) =>
  page.evaluate(() => {
    const shown = new Set<string>();
    Object.assign(window, { shown });
    const note = () => {
      const strip = document.querySelector('.import-strip');
      if (strip)
        shown.add(`${strip.textContent} ${strip.querySelector<HTMLElement>('.import-strip__done')?.style.width}`);
      requestAnimationFrame(note);
    };
    note();
  });

const progressShown = (page: Page) => page.evaluate(() => (window as unknown as { shown: Set<string> }).shown.size);

async function freshBoard() {
  const plan = demoPlan();
  const link = await makeBoard(served, { ...plan, site: { ...plan.site, ...NONE_YET } });
  const opened = await person(browser, link, 'Ada', { serviceWorkers: 'block' });
  await boardShown(opened.page);
  await opened.page.getByRole('toolbar', { name: 'Instruments' }).waitFor();
  await watchLongTasks(opened.page);
  await watchProgress(opened.page);
  return opened;
}

async function bring(file: string, what: string): Promise<void> {
  const { page, context } = await freshBoard();
  const before = await heapOf(page);
  const from = performance.now();
  await dropFile(page, '[data-testid=drawing]', file);
  await pictureLaid(page);
  const laid = (performance.now() - from) / 1000;
  await pictureSeen(page);
  const seen = (performance.now() - from) / 1000;
  const long = await longTasksOf(page);
  const steps = await progressShown(page);
  const heap = (await heapOf(page)) - before;
  process.stdout.write(
    `${what}: on the board after ${laid.toFixed(1)} s, seen after ${seen.toFixed(1)} s, progress moved ${steps} times, long tasks ${long.map((ms) => `${ms} ms`).join(', ') || 'none'}, heap ${heap.toFixed(1)} MB more, load ${loadavg()[0]?.toFixed(1)}\n`,
  );
  expect(steps).toBeGreaterThan(1);
  await context.close();
}

async function callOff(file: string, what: string): Promise<void> {
  const { page, context } = await freshBoard();
  await dropFile(page, '[data-testid=drawing]', file);
  const cancel = page.locator('.import-strip').getByRole('button', { name: 'Cancel' });
  await cancel.waitFor();
  const took = await page.evaluate(async () => {
    const [button] = [...document.querySelectorAll<HTMLElement>('.import-strip button')].slice(-1);
    const from = performance.now();
    button?.click();
    while (document.querySelector('.import-strip')) await new Promise((next) => requestAnimationFrame(next));
    return performance.now() - from;
  });
  process.stdout.write(`${what}: called off within ${took.toFixed(0)} ms\n`);
  expect(await page.getByRole('complementary', { name: 'Not to scale yet' }).count()).toBe(0);
  await context.close();
}

test('a picture of 60 megapixels is brought to a board, and called off', async () => {
  const jpeg = join(folder, 'aerial.jpg');
  writeFileSync(jpeg, (await drawLargeImage(browser)).bytes);
  const png = pictures.file('survey.png', SIDE, [60, 110, 160]);
  await bring(jpeg, 'a JPEG of 60 megapixels');
  await bring(png, 'a PNG of 60 megapixels');
  await callOff(jpeg, 'the JPEG');
  await callOff(png, 'the PNG');
});
