// Two people at one drawing table: what one draws the other sees at once, and nobody's hand holds what is gone.
import { type Feature, type Plan, presetOf, type SitePoint } from '@loopwright/model';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import {
  beadLength,
  boardShown,
  drag,
  movedBy,
  openSheet,
  pixelOf,
  playingOrder,
  savedWords,
  takeAndMove,
} from './board-page.ts';
import { bead, fourHoles, LAID, NAMES } from './four-holes.ts';
import { savedPlan } from './saved-plan.ts';
import { makeBoard, type Person, person } from './served-board.ts';
import { expectNear } from './site-by-hand.ts';
import { openStage } from './stage.ts';

const WITHIN = { timeout: 10_000, interval: 20 };
const HAND = 3;
const at = (x: number, y: number): SitePoint => ({ x, y });
const CORNERS = [at(-100, -100), at(100, -100), at(100, 100), at(-100, 100)];
const POND: Feature = { id: 'pond', kind: 'water', geometry: { type: 'area', rings: [CORNERS] }, ...presetOf('water') };

const stage = openStage();
let people: readonly Person[] = [];
let ada: Page;
let ben: Page;

beforeEach(async () => {
  const plan = fourHoles();
  const link = await makeBoard(stage.served, { ...plan, site: { ...plan.site, features: [POND] } });
  people = [await person(stage.browser, link, 'Ada'), await person(stage.browser, link, 'Ben')];
  const [first, second] = people;
  if (!first || !second) throw new Error('two people');
  [ada, ben] = [first.page, second.page];
  for (const page of [ada, ben]) {
    await boardShown(page);
    await page.getByRole('toolbar', { name: 'Instruments' }).waitFor();
    await expect.poll(() => savedWords(page), WITHIN).toContain('saved on the server');
  }
});
afterEach(async () => {
  const troubles = people.flatMap((one) => one.troubles);
  await Promise.all(people.map(({ context }) => context.close()));
  expect(troubles).toEqual([]);
});

const notice = (page: Page) => page.locator('.plan__word');
const ringOf = ({ site }: Plan) => {
  const geometry = site.features[0]?.geometry;
  return geometry?.type === 'area' ? (geometry.rings[0] ?? []) : [];
};

async function pointAt(page: Page, place: SitePoint): Promise<void> {
  const { x, y } = await pixelOf(page, place);
  await page.mouse.move(x, y, { steps: 3 });
}

async function pressAt(page: Page, place: SitePoint): Promise<void> {
  await pointAt(page, place);
  await page.mouse.down();
  await page.mouse.up();
}

test('a hole that one draws grows for the other, with its length, before it is written', async () => {
  await ada.getByTestId('drawing').focus();
  await ada.keyboard.press('d');
  await ada.getByRole('region', { name: 'Draw hole' }).waitFor();
  await ada.getByRole('button', { name: 'Snap', exact: true }).click();
  await pressAt(ada, at(-200, 170));
  await pointAt(ada, at(100, 170));
  await expect.poll(() => playingOrder(ben).then(({ length }) => length), WITHIN).toBe(5);
  const drawn = (await playingOrder(ben)).at(-1) ?? '';
  await expect.poll(async () => Math.abs((await beadLength(ben, drawn)) - 300) <= HAND, WITHIN).toBe(true);
  await pointAt(ada, at(0, 170));
  await expect.poll(async () => Math.abs((await beadLength(ben, drawn)) - 200) <= HAND, WITHIN).toBe(true);
  expect((await savedPlan(ben)).routings[0]?.holes).toHaveLength(4);

  await ada.getByTestId('drawing').focus();
  await ada.keyboard.press('Escape');
  await expect.poll(() => playingOrder(ben), WITHIN).toEqual(NAMES);
});

test('a hole that is removed leaves the hand of the other with a word, and is not moved by it', async () => {
  await takeAndMove(ada, LAID.two.green, movedBy(LAID.two.green, -40, 40));
  // Its line leans with the drag: 40 m west over 390, six on the first sixty.
  const line = await pixelOf(ben, at(LAID.two.tee.x - 6, LAID.two.tee.y + 60));
  await ben.mouse.click(line.x, line.y, { button: 'right' });
  await ben.getByRole('menuitem', { name: 'Remove from the plan' }).click();
  await expect.poll(() => notice(ada).textContent(), WITHIN).toContain('Hole 2 was removed by Ben meanwhile');
  await ada.mouse.move(600, 400);
  await ada.mouse.up();
  await expect.poll(() => playingOrder(ada), WITHIN).toEqual(['one', 'three', 'four']);
  const two = (await savedPlan(ada)).routings[0]?.holes.find(({ id }) => id === 'two');
  expect(two?.seat.in).toBe('removed');
  expect(two?.green?.centre).toEqual(LAID.two.green);

  await ben.keyboard.press('Control+z');
  await expect.poll(() => playingOrder(ada), WITHIN).toEqual(NAMES);
});

test('two corners of one outline, in two hands at once, both lie where they were let go', async () => {
  const [lower, , upper] = CORNERS;
  if (!lower || !upper) throw new Error('a square');
  await pressAt(ada, at(0, -60));
  await pressAt(ben, at(0, -60));
  await takeAndMove(ada, lower, movedBy(lower, -30, -40));
  await takeAndMove(ben, upper, movedBy(upper, 40, 30));
  // An outline is one value: of two that are let go in the same moment one holds. Here the second sees the first let go,
  // with both still in hand until then; a pointer has its whole name while it drags.
  const adaDrags = () => ben.getByTestId('pointers').getByText('Ada', { exact: true }).count();
  await expect.poll(adaDrags, WITHIN).toBe(1);
  await ada.mouse.up();
  await expect.poll(adaDrags, WITHIN).toBe(0);
  await ben.mouse.up();
  for (const page of [ada, ben]) {
    await expect.poll(async () => (ringOf(await savedPlan(page))[0]?.x ?? 0) < -115, WITHIN).toBe(true);
    await expect.poll(async () => (ringOf(await savedPlan(page))[2]?.x ?? 0) > 115, WITHIN).toBe(true);
  }
  const ring = ringOf(await savedPlan(ada));
  expect(ring).toEqual(ringOf(await savedPlan(ben)));
  expect(ring).toHaveLength(4);
  const meant = [movedBy(lower, -30, -40), CORNERS[1], movedBy(upper, 40, 30), CORNERS[3]];
  for (const [index, corner] of meant.entries()) expectNear(ring[index], corner ?? at(0, 0), 8);
});

test('a pencil line is seen while it is drawn, and stays when the pencil is lifted', async () => {
  await openSheet(ben, 'Site');
  await ben.getByText('Nothing is sketched.').waitFor();
  await ada.getByTestId('drawing').focus();
  await ada.keyboard.press('i');
  await ada.getByRole('region', { name: 'Pencil' }).waitFor();
  await takeAndMove(ada, at(-200, 180), at(150, 220));
  await expect.poll(() => ben.locator('.sketches li').count(), WITHIN).toBe(1);
  expect((await savedPlan(ben)).site.sketches ?? []).toEqual([]);
  await ada.mouse.up();
  await expect.poll(async () => (await savedPlan(ben)).site.sketches?.length, WITHIN).toBe(1);
  const [stroke] = (await savedPlan(ben)).site.sketches ?? [];
  if (stroke?.shape.kind !== 'stroke') throw new Error('no stroke');
  expect(stroke.by).toBe('Ada');
  expectNear(stroke.shape.points[0], at(-200, 180), HAND);
  expectNear(stroke.shape.points.at(-1), at(150, 220), HAND);
});

test('a routing that the other locks meanwhile takes no further move, and says so', async () => {
  const before = await beadLength(ada, 'two');
  await takeAndMove(ada, LAID.two.green, movedBy(LAID.two.green, 0, 40));
  await expect.poll(() => beadLength(ben, 'two'), WITHIN).not.toBe(before);
  await ben.getByRole('button', { name: /^Routing:/ }).click();
  await ben.getByRole('menuitem', { name: 'Lock as the existing course' }).click();
  await ada
    .locator('.head__routing')
    .getByText(/locked/i)
    .first()
    .waitFor();
  await ada.mouse.up();
  await expect.poll(() => beadLength(ada, 'two'), WITHIN).toBe(before);
  await expect.poll(() => beadLength(ben, 'two'), WITHIN).toBe(before);

  await drag(ada, LAID.three.green, movedBy(LAID.three.green, 0, 30));
  await expect.poll(() => notice(ada).textContent(), WITHIN).toMatch(/locked/);
  expect(await beadLength(ada, 'three')).toBe(350);
  await bead(ada, 'one').focus();
  await ada.keyboard.press('Delete');
  expect(await playingOrder(ben)).toEqual(NAMES);
});
