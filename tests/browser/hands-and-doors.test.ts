// What asks before it moves, beads in the hand, a file let go over a board, and a board that is closed for good.
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { demoPlan } from '@loopwright/demo';
import { CLOSE_CODES } from '@loopwright/protocol';
import type { BrowserContext, Page, WebSocketRoute } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import {
  beadLength,
  boardShown,
  drag,
  movedBy,
  openSheet,
  placeOf,
  playingOrder,
  savedWords,
  spareHoles,
} from './board-page.ts';
import { makeBoard, person } from './served-board.ts';
import { openStage } from './stage.ts';

const PLAN = demoPlan();
const ORDER = PLAN.routings[0]?.loops.flatMap(({ holes }) => holes) ?? [];
const HOLE = ORDER[3] ?? '';
const GREEN = placeOf(PLAN, HOLE, 'green');
const WITHIN = { timeout: 10_000, interval: 20 };

const stage = openStage();
let contexts: BrowserContext[] = [];

afterEach(async () => {
  await Promise.all(contexts.map((context) => context.close()));
  contexts = [];
});

async function enter(link: string, name: string): Promise<Page> {
  const { context, page } = await person(stage.browser, link, name);
  contexts.push(context);
  await boardShown(page);
  return page;
}

/** The demo with the fourth green pinned. */
function pinnedPlan() {
  const routings = PLAN.routings.map((routing) => ({
    ...routing,
    holes: routing.holes.map((hole) => (hole.id === HOLE ? { ...hole, pinned: ['green'] } : hole)),
  }));
  return { ...PLAN, routings };
}

test('a pinned green asks before it is dragged, and moves once the pin is out', async () => {
  const page = await enter(await makeBoard(stage.served, pinnedPlan()), 'Ada');
  const before = await beadLength(page, HOLE);
  await drag(page, GREEN, movedBy(GREEN, 5, 60));
  const question = page.getByRole('alertdialog');
  await question.getByRole('heading', { name: /^Pinned: green 4/ }).waitFor();
  expect(await beadLength(page, HOLE)).toBe(before);
  await question.getByRole('button', { name: 'Leave it pinned' }).click();
  await question.waitFor({ state: 'detached' });

  await drag(page, GREEN, movedBy(GREEN, 5, 60));
  await question.getByRole('button', { name: 'Take the pin out' }).click();
  await question.waitFor({ state: 'detached' });
  await drag(page, GREEN, movedBy(GREEN, 5, 60));
  await expect.poll(() => beadLength(page, HOLE), WITHIN).not.toBe(before);
});

/** Takes hold of a bead's disc and goes with it to the middle of another element, in small steps. */
async function carryBead(page: Page, hole: string, to: string): Promise<void> {
  const from = await page.locator(`li[data-hole="${hole}"] .bead__disc`).boundingBox();
  const there = await page.locator(to).boundingBox();
  if (!from || !there) throw new Error(`no bead ${hole}, or nothing at ${to}`);
  const [x, y] = [from.x + from.width / 2, from.y + from.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, there.y + there.height / 2 + 2, { steps: 10 });
}

test('a bead carried up the string shows its new place on both screens before it is put down', async () => {
  const link = await makeBoard(stage.served, PLAN);
  const [ada, ben] = [await enter(link, 'Ada'), await enter(link, 'Ben')];
  const [first = '', second = '', third = '', fourth = '', fifth = ''] = ORDER;
  const begins = async (page: Page) => (await playingOrder(page)).slice(0, 5);
  const moved = [first, fifth, second, third, fourth];

  await carryBead(ada, fifth, `li[data-hole="${first}"]`);
  await expect.poll(() => begins(ada), WITHIN).toEqual(moved);
  await expect.poll(() => begins(ben), WITHIN).toEqual(moved);
  await expect.poll(() => ada.locator('.round__worst .badge__line').count(), WITHIN).toBeGreaterThan(0);
  await openSheet(ben, 'What changed');
  await ben.getByText('Ada is dragging').waitFor();

  await ada.mouse.up();
  await expect.poll(() => ada.locator('.round__ghost').isVisible(), WITHIN).toBe(false);
  await expect.poll(() => savedWords(ada), WITHIN).toContain('saved on the server');
  expect(await begins(ben)).toEqual(moved);
  await ada.keyboard.press('Control+z');
  await expect.poll(() => begins(ben), WITHIN).toEqual(ORDER.slice(0, 5));
  await expect.poll(() => ben.locator('.changed__head').textContent(), WITHIN).toContain('Ada');
});

test('a bead let go over the tray is spare, and is called there as on the drawing', async () => {
  const page = await enter(await makeBoard(stage.served, PLAN), 'Ada');
  const spare = await spareHoles(page);
  await carryBead(page, HOLE, '.tray');
  await page.mouse.up();
  await expect.poll(() => spareHoles(page), WITHIN).toEqual([...spare, HOLE]);
  const discs = await page.locator('li[data-loop="tray"] .bead__disc').allTextContents();
  expect(discs).toEqual(['S1', 'S2']);
});

test('the spare tray is in sight on a laptop, however long the string', async () => {
  const page = await enter(await makeBoard(stage.served, PLAN), 'Ada');
  for (const height of [900, 700]) {
    await page.setViewportSize({ width: 1280, height });
    const last = await page.locator('li[data-loop="tray"]').last().boundingBox();
    expect(last && last.y + last.height).toBeLessThanOrEqual(height);
  }
});

test('totals of walks add up as they are shown', async () => {
  const page = await enter(await makeBoard(stage.served, PLAN), 'Ada');
  const figures = async (selector: string) =>
    (await page.locator(selector).allTextContents()).map((words) => Number(words.replace(',', '')));
  const walks = await figures('.totals td:last-child .changed-cell > span');
  const threads = await figures('.thread__figure');
  expect(walks).toHaveLength(3);
  expect(walks[2]).toBe((walks[0] ?? 0) + (walks[1] ?? 0));
  expect(walks[2]).toBe(threads.reduce((sum, walk) => sum + walk, 0));
});

test('a file let go over an open board is offered as a board of its own', async () => {
  const page = await enter(await makeBoard(stage.served, PLAN), 'Ada');
  const text = readFileSync(resolve(import.meta.dirname, '../samples/two-courses.geojson'), 'utf8');
  const carried = await page.evaluateHandle((content) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([content], 'two-courses.geojson', { type: 'application/json' }));
    return transfer;
  }, text);
  await page.dispatchEvent('.drop-on-board', 'drop', { dataTransfer: carried });
  await page.getByRole('button', { name: 'Make a new board from it' }).click();
  const offer = page.getByRole('dialog', { name: 'A new board from this file' });
  await offer.getByText('two-courses.geojson holds several').waitFor();
  expect(await offer.textContent()).toContain('The board that is open stays as it is');
  await page.keyboard.press('Escape');
  await offer.waitFor({ state: 'detached' });
  expect(await playingOrder(page)).toEqual(ORDER);
});

test('a board closed for good says why, keeps what was not taken, and is not called saved', async () => {
  const link = await makeBoard(stage.served, PLAN);
  const { context, page } = await person(stage.browser, 'about:blank', 'Ada');
  contexts.push(context);
  let socket: WebSocketRoute | undefined;
  let isHeld = false;
  await page.routeWebSocket(/\/sync\//, (route) => {
    const server = route.connectToServer();
    socket = route;
    route.onMessage((message) => {
      if (!isHeld) server.send(message);
    });
  });
  await page.goto(link);
  await boardShown(page);
  await expect.poll(() => savedWords(page), WITHIN).toContain('saved on the server');
  isHeld = true;
  await drag(page, GREEN, movedBy(GREEN, 5, 60));
  const { code, words } = CLOSE_CODES['edit-refused'];
  await socket?.close({ code, reason: 'edit-refused' });

  const closed = page.locator('.closed');
  await closed.getByText(words).waitFor();
  expect(await savedWords(page)).not.toContain('saved on the server');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    closed.getByRole('button', { name: 'Download the draft' }).click(),
  ]);
  expect(file.suggestedFilename()).toMatch(/draft\.loopwright\.json$/);
  expect(JSON.parse(readFileSync(await file.path(), 'utf8'))).toMatchObject({ loopwright: 1 });
});
