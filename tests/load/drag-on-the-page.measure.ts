// Two budgets of the page, measured in real Chromium on the built server:
// script time of a drag's frame (processor time of the page's main thread, from a trace), on the demo course alone and
// with ten others dragging, beside the same page without the analysis's memory, and on a busy board: 27 holes, 200
// features, an image of 60 megapixels; and the way of a drag from one screen to another.
// Prints what it finds; asserts only that there was something to measure.
import { fork } from 'node:child_process';
import { cpus, loadavg } from 'node:os';
import { demoPlan } from '@loopwright/demo';
import type { Plan } from '@loopwright/model';
import { roomPath } from '@loopwright/protocol';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { boardShown, pixelOf, placeOf } from '../browser/board-page.ts';
import { makeBoard, openBrowser, person, type Served, serve } from '../browser/served-board.ts';
import { enter } from '../faults/page.ts';
import { bundled, forgetfulPage, showPage } from './builds.ts';
import { busyPlan } from './busy-plan.ts';
import { bringImage, drawLargeImage, type LargeImage, overImage, pictureSeen } from './large-image.ts';
import type { Dragger } from './others-dragging.ts';
import { scriptOfMoves, TRACED } from './pictures.ts';
import { whereOf } from './where-of.ts';

const PLAN = demoPlan();
const ROUTING = PLAN.routings[0]?.id ?? '';
const HOLES = PLAN.routings[0]?.loops.flatMap(({ holes }) => holes) ?? [];
/** A hole that lies clear of the tray of instruments however far one looks from. */
const MINE = HOLES[11] ?? '';
const GREEN = placeOf(PLAN, MINE, 'green');
const STEPS = 110;
const OTHERS = 10;

let served: Served;
let browser: Browser;
let crowdProgram: string;
beforeAll(async () => {
  crowdProgram = await bundled('others-dragging');
  served = await serve();
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  await served?.close();
});

const quantile = (values: readonly number[], share: number) => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
};

function say(what: string, values: readonly number[], budget: string): void {
  const [p50, p95, worst] = [0.5, 0.95, 1].map((share) => quantile(values, share).toFixed(1));
  process.stdout.write(
    `${what}: p50 ${p50} ms, p95 ${p95} ms, worst ${worst} ms of ${values.length} (budget ${budget})\n`,
  );
}

/** Drags the green of one hole about in a circle, a move for each picture; milliseconds of script of each. */
async function dragFrames(page: Page): Promise<readonly number[]> {
  const start = await pixelOf(page, GREEN);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  const session = await page.context().newCDPSession(page);
  await browser.startTracing(page, { categories: TRACED });
  for (let step = 1; step <= STEPS; step++) {
    const angle = (step / STEPS) * 4 * Math.PI;
    const [x, y] = [start.x + 40 * Math.sin(angle), start.y + 40 * (1 - Math.cos(angle))];
    // Straight to the browser, whose answer comes once the page has taken the move in, which is once a picture: the
    // library's own mouse runs scripts of its own in the page.
    await session.send('Input.dispatchMouseEvent', { type: 'mouseMoved', x, y, button: 'left', buttons: 1 });
  }
  const pictures = scriptOfMoves(await browser.stopTracing());
  expect(await page.getByTestId('drawing').getAttribute('data-hover')).toBe('part');
  await session.detach();
  await page.keyboard.press('Escape');
  await page.mouse.up();
  return pictures.slice(10);
}

/** Ten people, each dragging the green of a hole of their own at 25 a second, until stopped. */
async function othersDragging(link: string): Promise<() => void> {
  const where = whereOf(link);
  const holes = HOLES.filter((hole) => hole !== MINE).slice(0, OTHERS);
  const draggers = await Promise.all(
    holes.map(async (hole, index): Promise<Dragger> => {
      const { cookie, entered } = await enter(where, `Guest ${index + 1}`);
      const room = roomPath({ board: entered.board, membership: entered.membership, room: 'plan' });
      const about = placeOf(PLAN, hole, 'green');
      return { url: `ws://${where.address}/sync/${room}`, cookie, routing: ROUTING, hole, about };
    }),
  );
  const crowd = fork(crowdProgram, [JSON.stringify(draggers)]);
  await new Promise((settle) => crowd.once('message', settle));
  return () => crowd.disconnect();
}

interface Measured {
  readonly plan: Plan;
  /** Beneath the plan, when there is one. */
  readonly image?: LargeImage;
  /** Another page than the one that is built. */
  readonly directory?: string;
}

/** The same drag alone and among ten others. */
async function measured({ plan, image, directory }: Measured) {
  const link = await makeBoard(served, image ? overImage(plan, image) : plan);
  if (image) await bringImage(whereOf(link), image);
  const { page, context } = await person(browser, 'about:blank', 'Ada', { serviceWorkers: 'block' });
  if (directory !== undefined) await showPage(context, directory);
  await page.goto(link);
  await boardShown(page);
  if (image) await pictureSeen(page);
  await dragFrames(page);
  const alone = await dragFrames(page);
  const stop = await othersDragging(link);
  await page.waitForFunction((n) => document.querySelectorAll('[data-testid=pointers] li').length === n, OTHERS);
  const together = await dragFrames(page);
  stop();
  await context.close();
  return { alone, together };
}

test('script time of a drag frame, alone and with ten others dragging', async () => {
  process.stdout.write(`${cpus()[0]?.model} × ${cpus().length}, load ${loadavg()[0]?.toFixed(1)}\n`);
  const ours = await measured({ plan: PLAN });
  say('script of a drag frame, alone', ours.alone, 'p95 8 ms');
  say('script of a drag frame, ten others dragging', ours.together, 'p95 8 ms');
  const rival = await measured({ plan: PLAN, directory: await forgetfulPage() });
  say('the same with a full analysis for each state, alone', rival.alone, 'rival');
  say('the same with a full analysis for each state, ten others dragging', rival.together, 'rival');
  const ratio = (how: 'alone' | 'together') => (quantile(rival[how], 0.5) / quantile(ours[how], 0.5)).toFixed(2);
  process.stdout.write(`rival ÷ ours, p50: alone ${ratio('alone')}, among ten others ${ratio('together')}\n`);
  expect(Math.min(ours.alone.length, ours.together.length)).toBeGreaterThan(STEPS / 2);
});

test('script time of a drag frame on a busy board: 27 holes, 200 features, an image of 60 megapixels', async () => {
  const image = await drawLargeImage(browser);
  process.stdout.write(`an image of ${(image.bytes.length / 1e6).toFixed(0)} MB; load ${loadavg()[0]?.toFixed(1)}\n`);
  const { alone, together } = await measured({ plan: busyPlan(), image });
  say('script of a drag frame on a busy board, alone', alone, 'p95 8 ms');
  say('script of a drag frame on a busy board, ten others dragging', together, 'p95 8 ms');
  expect(Math.min(alone.length, together.length)).toBeGreaterThan(STEPS / 2);
});

/** Notes when the length on a hole's bead changes, on the clock all pages of the machine share. */
async function watchBead(page: Page): Promise<void> {
  await page.evaluate((hole) => {
    const seen: { said: string; at: number }[] = [];
    Object.assign(window, { beadSeen: seen });
    const node = document.querySelector(`li[data-hole="${hole}"] .bead__length`);
    const note = () => {
      const said = node?.childNodes[0]?.textContent ?? '';
      if (seen.at(-1)?.said !== said) seen.push({ said, at: performance.timeOrigin + performance.now() });
    };
    note();
    if (node) new MutationObserver(note).observe(node, { childList: true, characterData: true, subtree: true });
    window.addEventListener(
      'pointermove',
      (event) => Object.assign(window, { movedAt: performance.timeOrigin + event.timeStamp }),
      true,
    );
  }, MINE);
}

interface Watching {
  readonly beadSeen: { said: string; at: number }[];
  readonly movedAt: number;
}

const nextPicture = (page: Page) =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

test('a drag on one screen to its consequence on another', async () => {
  const link = await makeBoard(served, PLAN);
  const [ada, ben] = [await person(browser, link, 'Ada'), await person(browser, link, 'Ben')];
  await Promise.all([boardShown(ada.page), boardShown(ben.page)]);
  await Promise.all([watchBead(ada.page), watchBead(ben.page)]);
  const start = await pixelOf(ada.page, GREEN);
  await ada.page.mouse.move(start.x, start.y);
  await ada.page.mouse.down();
  const ways: number[] = [];
  for (let step = 1; step <= 80; step++) {
    await ada.page.mouse.move(start.x, start.y - 3 * (step <= 40 ? step : 80 - step));
    await nextPicture(ada.page);
    const { said, movedAt } = await ada.page.evaluate(() => {
      const { beadSeen, movedAt: at } = window as unknown as Watching;
      return { said: beadSeen.at(-1)?.said, movedAt: at };
    });
    const shown = await ben.page.waitForFunction(
      (length) => (window as unknown as Watching).beadSeen.findLast(({ said: there }) => there === length)?.at,
      said,
    );
    ways.push(Number(await shown.jsonValue()) - movedAt);
  }
  await ada.page.mouse.up();
  await Promise.all([ada.context.close(), ben.context.close()]);
  // A step that changed no rounded figure was shown before it was made.
  const made = ways.filter((way) => way > 0);
  say('a drag on one screen to its consequence on another', made, 'p95 100 ms');
  expect(made.length).toBeGreaterThan(40);
});
