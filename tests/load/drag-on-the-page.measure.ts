// Two budgets of the page, measured in real Chromium on the built server, with the demo course:
// script time of a drag's frame, alone and with ten others dragging; and the way of a drag from one screen to another.
// Prints what it finds; asserts only that there was something to measure.
import { cpus, loadavg } from 'node:os';
import { demoPlan } from '@loopwright/demo';
import type { Browser, CDPSession, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { boardShown, movedBy, pixelOf, placeOf } from '../browser/board-page.ts';
import { makeBoard, openBrowser, person, type Served, serve } from '../browser/served-board.ts';
import { enter, openPage, type Page as Peer } from '../faults/page.ts';

const PLAN = demoPlan();
const ROUTING = PLAN.routings[0]?.id ?? '';
const HOLES = PLAN.routings[0]?.loops.flatMap(({ holes }) => holes) ?? [];
const MINE = HOLES[3] ?? '';
const GREEN = placeOf(PLAN, MINE, 'green');
const STEPS = 150;
const TICK = 40;

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

/** Seconds of script the page has run so far. */
async function scriptSeconds(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics');
  return metrics.find(({ name }) => name === 'ScriptDuration')?.value ?? Number.NaN;
}

const nextPicture = (page: Page) =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

/** Drags the green of one hole about in a circle; milliseconds of script of each step's pictures. */
async function dragFrames(page: Page): Promise<readonly number[]> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  const start = await pixelOf(page, GREEN);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  const frames: number[] = [];
  for (let step = 1; step <= STEPS; step++) {
    const before = await scriptSeconds(session);
    const angle = (step / STEPS) * 4 * Math.PI;
    await page.mouse.move(start.x + 40 * Math.sin(angle), start.y + 40 * (1 - Math.cos(angle)));
    await nextPicture(page);
    frames.push((await scriptSeconds(session)) - before);
  }
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await session.detach();
  return frames.slice(10).map((seconds) => seconds * 1000);
}

/** Ten people without screens, each dragging the green of a hole of their own at 25 a second, until stopped. */
async function othersDragging(link: string): Promise<() => void> {
  const { host, pathname, hash } = new URL(link);
  const where = { address: host, board: pathname.split('/').at(-1) ?? '', secret: hash.slice(1) };
  const holes = HOLES.filter((hole) => hole !== MINE).slice(0, 10);
  const peers: Peer[] = [];
  for (const [index] of holes.entries()) peers.push(openPage(await enter(where, `Guest ${index + 1}`)));
  await Promise.all(peers.map((peer) => peer.until('saved')));
  let tick = 0;
  const timer = setInterval(() => {
    tick += 1;
    for (const [index, peer] of peers.entries()) {
      const hole = holes[index] ?? '';
      const to = movedBy(
        placeOf(PLAN, hole, 'green'),
        20 * Math.sin(tick / 9 + index),
        20 * Math.cos(tick / 7 + index),
      );
      const drag = { edit: 'move part', routing: ROUTING, hole, part: 'green', to } as const;
      peer.connection.presence.say({ pointer: to, selection: [hole], routing: ROUTING, drag });
    }
  }, TICK);
  return () => {
    clearInterval(timer);
    for (const peer of peers) peer.close();
  };
}

test('script time of a drag frame, alone and with ten others dragging', async () => {
  process.stdout.write(`${cpus()[0]?.model} × ${cpus().length}, load ${loadavg()[0]?.toFixed(1)}\n`);
  const link = await makeBoard(served, PLAN);
  const { page, context } = await person(browser, link, 'Ada');
  await boardShown(page);
  await dragFrames(page);
  const alone = await dragFrames(page);
  const stop = await othersDragging(link);
  await page.waitForFunction(() => document.querySelectorAll('[data-testid=pointers] li').length === 10);
  const together = await dragFrames(page);
  stop();
  await context.close();
  say('script of a drag frame, alone', alone, 'p95 8 ms');
  say('script of a drag frame (two pictures), ten others dragging', together, 'p95 8 ms');
  expect(alone.length + together.length).toBe(2 * (STEPS - 10));
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
