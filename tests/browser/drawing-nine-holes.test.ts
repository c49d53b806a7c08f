// Nine holes on bare land, by mouse, by keyboard alone and by touch; what it takes is written in apps/board/TASKS.md.
import { newPlan, type SitePoint } from '@loopwright/model';
import type { Page } from 'playwright-core';
import { afterAll, expect, test } from 'vitest';
import { beadLength, type Pixel, pixelOf, playingOrder } from './board-page.ts';
import { makeBoard, person } from './served-board.ts';
import { openStage } from './stage.ts';

const stage = openStage();

const at = (x: number, y: number): SitePoint => ({ x, y });
/** Tee, turn where there is one, green; metres about the middle of the drawing. */
const HOLES: readonly (readonly SitePoint[])[] = [
  [at(-500, -600), at(-260, -600), at(-120, -560)],
  [at(-60, -540), at(100, -540)],
  [at(150, -570), at(390, -570), at(520, -500)],
  [at(550, -450), at(560, -210), at(520, -70)],
  [at(540, -10), at(560, 200), at(480, 310)],
  [at(430, 320), at(270, 330)],
  [at(220, 300), at(60, 160), at(0, -20)],
  [at(-50, -50), at(-200, -200), at(-250, -330)],
  [at(-300, -350), at(-420, -420), at(-520, -520)],
];

interface Counted {
  readonly by: string;
  clicks: number;
  keys: number;
}

async function bareBoard(name: string): Promise<Page> {
  let ids = 0;
  const freshId = (letter: string) => `${letter}${ids++}`;
  const plan = newPlan({ name: 'Made-up Moor', units: 'metres', holes: 18, freshId });
  const link = await makeBoard(stage.served, plan);
  const { page } = await person(stage.browser, link, name);
  await page.getByRole('toolbar', { name: 'Instruments' }).waitFor();
  return page;
}

async function nineDrawn(page: Page): Promise<void> {
  await expect.poll(() => playingOrder(page).then(({ length }) => length)).toBe(9);
  await expect.poll(() => page.locator('.saved').textContent()).toContain('saved');
}

const counts: Counted[] = [];
const counted = (by: string): Counted => {
  const count = { by, clicks: 0, keys: 0 };
  counts.push(count);
  return count;
};

test('by mouse: a click for tee and turn, two for the green', async () => {
  const page = await bareBoard('Mouse');
  const count = counted('mouse');
  const click = async (place: Pixel, times: 1 | 2) => {
    await page.mouse.click(place.x, place.y, { clickCount: times });
    count.clicks += times;
  };
  await page.getByRole('button', { name: 'Draw hole' }).first().click();
  count.clicks += 1;
  for (const points of HOLES) {
    for (const [index, point] of points.entries()) {
      const place = await pixelOf(page, point);
      await page.mouse.move(place.x, place.y, { steps: 3 });
      await click(place, index === points.length - 1 ? 2 : 1);
    }
  }
  await nineDrawn(page);
  await page.context().close();
  expect(count.clicks).toBe(1 + HOLES.reduce((sum, points) => sum + points.length + 1, 0));
});

test('by keyboard alone: lengths and bearings typed, tees found with the arrows', async () => {
  const page = await bareBoard('Keys');
  const count = counted('keyboard');
  const press = async (key: string) => {
    await page.keyboard.press(key);
    count.keys += 1;
  };
  const type = async (words: string) => {
    for (const letter of words) await press(letter);
    await press('Enter');
  };
  await press('d');
  for (const [index, points] of HOLES.entries()) {
    const [tee, ...legs] = points;
    const last = HOLES[index - 1]?.at(-1);
    if (!tee) throw new Error('a hole without a tee');
    if (last) await walkTo(press, last, tee);
    else await type(`(${tee.x}, ${tee.y})`);
    let from = tee;
    for (const point of legs) {
      await type(legBetween(from, point));
      from = point;
    }
    await press('Enter');
  }
  await nineDrawn(page);
  // The lengths that were typed, in the unit they are read in: 240 and 146.
  const [first = ''] = await playingOrder(page);
  expect(await beadLength(page, first)).toBe(386);
  await page.context().close();
  expect(count).toMatchObject({ clicks: 0 });
});

/** Brings the cross up where the last green is, moves it in tens of metres, and presses. */
async function walkTo(press: (key: string) => Promise<void>, from: SitePoint, to: SitePoint): Promise<void> {
  await press('ArrowUp');
  const [east, north] = [Math.round((to.x - from.x) / 10), Math.round((to.y - from.y) / 10)];
  for (let step = 0; step < Math.abs(east); step++) await press(east > 0 ? 'ArrowRight' : 'ArrowLeft');
  for (let step = 0; step < Math.abs(north); step++) await press(north > 0 ? 'ArrowUp' : 'ArrowDown');
  await press(' ');
}

function legBetween(from: SitePoint, to: SitePoint): string {
  const [east, north] = [to.x - from.x, to.y - from.y];
  const degrees = (Math.round((Math.atan2(east, north) * 180) / Math.PI) + 360) % 360;
  return `${Math.round(Math.sqrt(east * east + north * north))}@${degrees}`;
}

test('by touch: a tap for tee and turn, two for the green', async () => {
  const page = await bareBoard('Finger');
  const count = counted('touch');
  const touch = await page.context().newCDPSession(page);
  const tap = async ({ x, y }: Pixel) => {
    await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [{ x, y }] });
    await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    count.clicks += 1;
  };
  await page.getByRole('button', { name: 'Draw hole' }).first().click();
  count.clicks += 1;
  for (const points of HOLES) {
    for (const [index, point] of points.entries()) {
      const place = await pixelOf(page, point);
      await tap(place);
      if (index === points.length - 1) await tap(place);
    }
  }
  await nineDrawn(page);
  await page.context().close();
});

afterAll(() => {
  // What the page apps/board/TASKS.md says was measured here.
  if (process.env.TASKS) process.stdout.write(`${JSON.stringify(counts)}\n`);
});
