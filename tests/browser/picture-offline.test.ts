// A board with a picture of the site, opened where there is no network: the picture is there as it was.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { pixelOf, savedWords } from './board-page.ts';
import { mouseHand } from './counted-hand.ts';
import { openPictures } from './made-picture.ts';
import { boardFromPicture, visitor } from './new-board.ts';
import { openStage } from './stage.ts';

const WITHIN = { timeout: 30_000, interval: 50 };
const BAND = [60, 110, 160] as const;

const stage = openStage();
const survey = openPictures().file('survey.png', 1600, BAND);

/**
 * The colour of the paper in the upper band of the picture: 40 of its 1,600 pixels, which are laid 1,200 m wide about the
 * middle, so that the band lies between 570 and 600 m north.
 */
async function bandColour(page: Page): Promise<readonly number[]> {
  const box = await page.getByTestId('drawing').boundingBox();
  const place = await pixelOf(page, { x: 0, y: 585 });
  const at = { x: place.x - (box?.x ?? 0), y: place.y - (box?.y ?? 0) };
  return page.evaluate(({ x, y }) => {
    const canvas = document.querySelector('.konvajs-content canvas');
    if (!(canvas instanceof HTMLCanvasElement)) return [];
    const ratio = canvas.width / canvas.clientWidth;
    const colour = canvas.getContext('2d')?.getImageData(x * ratio, y * ratio, 1, 1).data ?? [];
    return [...colour].slice(0, 3);
  }, at);
}

const showsTheBand = (page: Page) =>
  expect
    .poll(async () => {
      const colour = await bandColour(page);
      return BAND.every((part, index) => Math.abs((colour[index] ?? -99) - part) < 8);
    }, WITHIN)
    .toBe(true);

test('a board that was opened before opens without a server with its picture', async () => {
  const { context, page } = await visitor(stage, 'Ada');
  await boardFromPicture(mouseHand(page), 'Made-up Moor', survey, 'chosen');
  await showsTheBand(page);
  await expect.poll(() => savedWords(page), WITHIN).toContain('saved on the server');
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  const link = page.url();
  await page.close();
  await stage.served.kill();

  const again = await context.newPage();
  await again.goto(link);
  await again.getByTestId('drawing').waitFor();
  await expect.poll(() => savedWords(again), WITHIN).toContain('offline');
  await showsTheBand(again);
  await stage.served.restart();
  await context.close();
});
