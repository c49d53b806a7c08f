// What a person sees and does on an open board, in words that the tests can read aloud.
import type { PartId, Plan, SitePoint } from '@loopwright/model';
import type { Page } from 'playwright-core';

export interface Pixel {
  readonly x: number;
  readonly y: number;
}

/** Waits until the board's holes are on the string of beads. */
export async function boardShown(page: Page): Promise<void> {
  await page.getByTestId('board').waitFor();
  await page.locator('.bead__button').first().waitFor();
}

/** Where a site point is on the screen now, by what the drawing says of its view. */
export async function pixelOf(page: Page, at: SitePoint): Promise<Pixel> {
  const surface = page.getByTestId('drawing');
  const box = await surface.boundingBox();
  const view = await surface.getAttribute('data-view');
  const [scale, x, y] = (view ?? '').split(' ').map(Number);
  if (!box || scale === undefined || x === undefined || y === undefined) throw new Error('the drawing says no view');
  return { x: box.x + x + at.x * scale, y: box.y + y - at.y * scale };
}

/** The figure of one hole's bead: its length as the round shows it. */
export async function beadLength(page: Page, hole: string): Promise<number> {
  const words = await page
    .locator(`li[data-hole="${hole}"] .bead__length`)
    .evaluate((node) => node.childNodes[0]?.textContent);
  return Number(words);
}

/** The holes in the order of the string, as ids; spare ones left out. */
export async function playingOrder(page: Page): Promise<readonly string[]> {
  return page
    .locator('li[data-slot="bead"]')
    .evaluateAll((beads) => beads.map((bead) => bead.getAttribute('data-hole') ?? ''));
}

export async function spareHoles(page: Page): Promise<readonly string[]> {
  return page
    .locator('li[data-loop="tray"]')
    .evaluateAll((beads) => beads.map((bead) => bead.getAttribute('data-hole') ?? ''));
}

export async function savedWords(page: Page): Promise<string> {
  return ((await page.locator('.saved').textContent()) ?? '').trim();
}

/** Opens a sheet of the drawer by its tab. */
export async function openSheet(page: Page, title: string): Promise<void> {
  await page.getByRole('tab', { name: title, exact: true }).first().click();
}

/** Takes hold of a place and moves it in small steps; the caller lets go. */
export async function takeAndMove(page: Page, from: SitePoint, to: SitePoint): Promise<void> {
  const [start, end] = [await pixelOf(page, from), await pixelOf(page, to)];
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  for (let step = 1; step <= 8; step++) {
    await page.mouse.move(start.x + ((end.x - start.x) * step) / 8, start.y + ((end.y - start.y) * step) / 8);
  }
}

export async function drag(page: Page, from: SitePoint, to: SitePoint): Promise<void> {
  await takeAndMove(page, from, to);
  await page.mouse.up();
}

/** The place of one part in a plan. */
export function placeOf(plan: Plan, hole: string, part: PartId): SitePoint {
  const found = plan.routings[0]?.holes.find(({ id }) => id === hole);
  const at =
    part === 'green'
      ? found?.green?.centre
      : part.startsWith('tee:')
        ? found?.tees[part.slice('tee:'.length)]
        : found?.turnPoints.find(({ id }) => `turn:${id}` === part)?.at;
  if (!at) throw new Error(`no ${part} on ${hole}`);
  return at;
}

export function movedBy(at: SitePoint, x: number, y: number): SitePoint {
  return { x: at.x + x, y: at.y + y };
}
