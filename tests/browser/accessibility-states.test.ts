// The board in the states that work brings about, on three windows and in forced colours: axe finds nothing, and
// everything that can be pressed is large enough to be hit.
import { demoPlan } from '@loopwright/demo';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { smallTargets, violations } from './axe-violations.ts';
import { boardShown, openSheet, savedWords } from './board-page.ts';
import { makeBoard, person } from './served-board.ts';
import { openStage } from './stage.ts';

const PLAN = demoPlan();
const WITHIN = { timeout: 10_000, interval: 50 };
const INSTRUMENTS = [
  'Draw hole',
  'Site mark',
  'Rod',
  'Reach',
  'Measure line',
  'Measure area',
  'Pencil',
  'Clearance ring',
  'Waypoints',
  'Boundary',
  'Base',
  'Feature',
];

const USUAL = { forcedColors: 'none', contrast: 'no-preference', colorScheme: 'light', reducedMotion: null } as const;

const LAND = JSON.stringify({
  type: 'FeatureCollection',
  features: [
    {
      type: 'Feature',
      properties: { natural: 'water', name: 'Mill pond' },
      geometry: {
        type: 'LineString',
        coordinates: [
          [0.1, 51.1],
          [0.1005, 51.1005],
        ],
      },
    },
  ],
});

const stage = openStage();

/** What is wrong with the states somebody goes through, each under its name; empty when nothing is. */
function checkedStates(page: Page) {
  const wrong: Record<string, readonly string[]> = {};
  return {
    wrong,
    check: async (state: string, part?: string) => {
      const found = [...(await violations(page, part)), ...(await smallTargets(page))];
      if (found.length > 0) wrong[state] = found;
    },
  };
}

async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll<HTMLElement>('.fold__button[aria-expanded=false]')) fold.click();
  });
}

async function onTheDemo(options: BrowserContextOptions = {}) {
  const { context, page } = await person(stage.browser, await makeBoard(stage.served, PLAN), 'Ada', options);
  await boardShown(page);
  await page.getByRole('toolbar', { name: 'Instruments' }).waitFor();
  return { context, page, ...checkedStates(page) };
}

test('every instrument in the hand', async () => {
  const { context, page, check, wrong } = await onTheDemo();
  for (const title of INSTRUMENTS) {
    await page.getByRole('toolbar', { name: 'Instruments' }).getByRole('button', { name: title, exact: true }).click();
    await page.locator('.strip').waitFor();
    await check(title, '.table-top');
  }
  expect(wrong).toEqual({});
  await context.close();
});

test('the hole and site sheets, several holes, and every menu and dialog', async () => {
  const { context, page, check, wrong } = await onTheDemo({ viewport: { width: 1280, height: 720 } });
  await check('opened');
  await page.locator('.bead__button').nth(3).click();
  await openSheet(page, 'Hole');
  await page.locator('.hole-heading').waitFor();
  await unfold(page);
  await check('hole sheet, all of it', '.drawer');
  await page.getByTestId('drawing').focus();
  await page.keyboard.press('Shift+F10');
  await page.getByRole('menu').waitFor();
  await check('hole menu');
  await page.keyboard.press('Escape');
  await page.getByTestId('drawing').focus();
  await page.keyboard.press('Control+a');
  await check('all holes');
  await openSheet(page, 'Site');
  await page.locator('.drawer .fold').first().waitFor();
  await unfold(page);
  await check('site sheet', '.drawer');
  await openSheet(page, 'Holes and points');
  await page.locator('.points, .fold').first().waitFor();
  await unfold(page);
  await check('holes and points, all of it', '.drawer');
  await openSheet(page, 'Card');
  await page.getByRole('button', { name: /^Tee sets/ }).click();
  await page.getByRole('dialog').waitFor();
  await check('tee sets');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: /^Routing: / }).click();
  await page.getByRole('menu').waitFor();
  await check('routings');
  await page.getByRole('menuitem', { name: /^Rounds of loops/ }).click();
  await page.getByRole('dialog').waitFor();
  await check('rounds');
  expect(wrong).toEqual({});
  await context.close();
});

test('a tablet, a telephone, and twice as large on a small screen', async () => {
  const { context, page, check, wrong } = await onTheDemo();
  for (const [width, height] of [
    [768, 1024],
    [390, 844],
    [640, 360],
  ] as const) {
    await page.setViewportSize({ width, height });
    await check(`${width} × ${height}`);
    for (const sheet of ['Hole', 'Site', 'Card', 'Holes and points']) {
      await openSheet(page, sheet);
      await check(`${width} × ${height}, ${sheet}`, '.drawer');
    }
  }
  expect(wrong).toEqual({});
  await context.close();
});

test('forced colours, more contrast, dark surroundings and reduced motion', async () => {
  const { context, page, check, wrong } = await onTheDemo();
  for (const media of [
    { forcedColors: 'active' },
    { contrast: 'more' },
    { colorScheme: 'dark', reducedMotion: 'reduce' },
  ] as const) {
    await page.emulateMedia({ ...USUAL, ...media });
    await check(JSON.stringify(media));
  }
  const moving = await page.evaluate(
    () => document.getAnimations().filter((each) => each.playState === 'running').length,
  );
  expect(moving).toBe(0);
  expect(wrong).toEqual({});
  await context.close();
});

test('offline', async () => {
  const { context, page, check, wrong } = await onTheDemo();
  await stage.served.kill();
  await expect.poll(() => savedWords(page), WITHIN).toContain('offline');
  await check('offline');
  await stage.served.restart();
  expect(wrong).toEqual({});
  await context.close();
});

test('files: a picture that is none, features of the land', async () => {
  const { context, page, check, wrong } = await onTheDemo();
  await openSheet(page, 'Site');
  const picker = page.locator('.drawer input[type=file]').first();
  await picker.setInputFiles({ name: 'plan.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
  await page.locator('.import-strip--failed').waitFor();
  await check('refused picture');
  await page.getByRole('button', { name: 'Close', exact: true }).last().click();
  await page.getByRole('button', { name: /^Features/ }).click();
  const features = page.locator('.drawer input[accept*=geojson]');
  await features.setInputFiles({ name: 'land.geojson', mimeType: 'text/plain', buffer: Buffer.from(LAND) });
  await page.getByRole('dialog').waitFor();
  await check('features to be added', '[role=dialog]');
  expect(wrong).toEqual({});
  await context.close();
});
