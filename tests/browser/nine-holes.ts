// Nine holes on an invented site, with the lengths that follow from where they lie.
import type { Plan, SitePoint } from '@loopwright/model';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { beadLength, openSheet, playingOrder } from './board-page.ts';

const at = (x: number, y: number): SitePoint => ({ x, y });

/** Tee, turn where there is one, green; metres about the middle of the drawing. */
export const HOLES: readonly (readonly SitePoint[])[] = [
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

/**
 * Their lengths by Pythagoras, leg by leg and in whole metres: the first is 240 + √(140² + 40²) = 240 + 145.6. They come
 * to 2,860 m.
 */
export const LENGTHS = [386, 160, 388, 386, 347, 160, 402, 351, 280] as const;

/**
 * What is typed where legs are typed, each leg in whole metres: the seventh is 213 + 190 then, not 212.6 + 189.7. They
 * come to 2,861 m.
 */
export const TYPED_LENGTHS = [386, 160, 388, 386, 347, 160, 403, 351, 280] as const;

export async function nineDrawn(page: Page): Promise<void> {
  await expect.poll(() => playingOrder(page).then(({ length }) => length)).toBe(9);
  await expect.poll(() => page.locator('.saved').textContent()).toContain('saved on the server');
}

/** Hole by hole as the beads say it, in playing order. */
export async function beadLengths(page: Page): Promise<readonly number[]> {
  const order = await playingOrder(page);
  return Promise.all(order.map((hole) => beadLength(page, hole)));
}

/** The back tees' column of the card: the total of the nine called so. */
export async function cardTotal(page: Page, nine: string): Promise<number> {
  await openSheet(page, 'Card');
  const row = page.locator('.card-table .table__total').filter({ has: page.getByText(nine, { exact: true }) });
  const words = await row.locator('td').nth(2).textContent();
  return Number((words ?? '').replace(/\D/g, ''));
}

/** The line of each hole of the round, as the plan has it. */
export function linesOf({ routings: [routing] }: Plan): readonly (readonly SitePoint[])[] {
  const order = routing?.loops.flatMap(({ holes }) => holes) ?? [];
  return order.map((id) => {
    const hole = routing?.holes.find((one) => one.id === id);
    const [tee, green] = [hole?.tees.back, hole?.green?.centre];
    return [...(tee ? [tee] : []), ...(hole?.turnPoints.map((turn) => turn.at) ?? []), ...(green ? [green] : [])];
  });
}

/** Pythagoras along a line. */
export function lengthOf(line: readonly SitePoint[]): number {
  return line.reduce((sum, { x, y }, index) => {
    const before = line[index - 1];
    return before ? sum + Math.sqrt((x - before.x) ** 2 + (y - before.y) ** 2) : sum;
  }, 0);
}

const sum = (figures: readonly number[]) => figures.reduce((all, one) => all + one, 0);

/**
 * The round says what the plan's points come to, the card's total is the sum of what it shows, and both are what was worked
 * by hand, as far as a hand that presses whole pixels can be.
 */
export async function expectDrawn(page: Page, plan: Plan, { within }: { readonly within: number }): Promise<void> {
  const shown = await beadLengths(page);
  expect(shown).toEqual(linesOf(plan).map((line) => Math.round(lengthOf(line))));
  for (const [index, length] of LENGTHS.entries()) {
    expect(Math.abs((shown[index] ?? 0) - length), `hole ${index + 1}`).toBeLessThanOrEqual(within);
  }
  expect(await cardTotal(page, 'Out')).toBe(sum(shown));
}
