// Work that is counted, not timed, so that a busy machine says the same: what a drag draws, changes and says.
import { demoPlan } from '@loopwright/demo';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { boardShown, pixelOf, placeOf } from './board-page.ts';
import { makeBoard, person } from './served-board.ts';
import { openStage } from './stage.ts';

const PLAN = demoPlan();
const HOLES = PLAN.routings[0]?.loops.flatMap(({ holes }) => holes) ?? [];
const [BEFORE = '', MINE = '', AFTER = ''] = HOLES.slice(10, 13);
const MOVES = 40;
/** The document's limit for what one person says of a drag, and what a slow machine's clock may add to it. */
const MOST_SAID_A_SECOND = 25 + 5;

const stage = openStage();

interface Counted {
  /** For each canvas, from the ground up: how often it was wiped to be drawn anew. */
  readonly layers: number[];
  /** Holes whose beads changed on the page. */
  readonly beads: string[];
}

/** Counts in the page from now on. */
async function count(page: Page): Promise<void> {
  await page.evaluate(() => {
    const canvases = [...document.querySelectorAll<HTMLCanvasElement>('[data-testid=drawing] canvas')];
    const layers = canvases.map(() => 0);
    const beads = new Set<string>();
    for (const [index, canvas] of canvases.entries()) {
      const pen = canvas.getContext('2d');
      if (!pen) continue;
      const wipe = pen.clearRect.bind(pen);
      pen.clearRect = (...box) => {
        layers[index] = (layers[index] ?? 0) + 1;
        wipe(...box);
      };
    }
    const watch = new MutationObserver((changes) => {
      for (const { target } of changes) {
        const within = target instanceof Element ? target : target.parentElement;
        const hole = within?.closest<HTMLElement>('li[data-hole]')?.dataset.hole;
        if (hole !== undefined) beads.add(hole);
      }
    });
    const round = document.querySelector('.round__beads');
    if (round) watch.observe(round, { subtree: true, childList: true, characterData: true, attributes: true });
    Object.assign(window, { counted: () => ({ layers, beads: [...beads] }) });
  });
}

const counted = (page: Page): Promise<Counted> =>
  page.evaluate(() => (window as unknown as { counted(): Counted }).counted());

/** Moves the pointer in a small circle, a move for each picture. */
async function circle(page: Page, about: { readonly x: number; readonly y: number }): Promise<void> {
  for (let move = 1; move <= MOVES; move++) {
    const angle = (move / MOVES) * 2 * Math.PI;
    await page.mouse.move(about.x + 20 * Math.sin(angle), about.y + 20 * (1 - Math.cos(angle)));
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(done)));
  }
}

test('in a drag the moving layer alone is drawn, no bead changes that it does not concern, and little is said', async () => {
  const { page, context } = await person(stage.browser, 'about:blank', 'Ada');
  const said: number[] = [];
  page.on('websocket', (socket) => socket.on('framesent', () => said.push(performance.now())));
  await page.goto(await makeBoard(stage.served, PLAN));
  await boardShown(page);
  const green = await pixelOf(page, placeOf(PLAN, MINE, 'green'));
  await page.mouse.move(green.x, green.y);
  await page.mouse.down();
  // What picks the hole up is drawn once: then it lies in the hand.
  await page.mouse.move(green.x + 12, green.y);
  await page.getByTestId('badge').first().waitFor();
  await count(page);
  const from = performance.now();
  await circle(page, green);
  const seconds = (performance.now() - from) / 1000;
  const { layers, beads } = await counted(page);
  const sent = said.filter((at) => at >= from).length;
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await context.close();

  const drawn = layers.filter((times) => times > 0);
  expect(drawn, `layers drawn ${layers.join(', ')}`).toHaveLength(1);
  expect(drawn[0]).toBeGreaterThan(MOVES / 4);
  expect(drawn[0]).toBeLessThanOrEqual(MOVES + 2);
  expect(beads.filter((hole) => ![BEFORE, MINE, AFTER].includes(hole))).toEqual([]);
  expect(sent).toBeLessThanOrEqual(Math.ceil(seconds * MOST_SAID_A_SECOND) + 2);
});
