// Four plain holes on bare land, so that every figure after a change can be worked by hand.
import { type Green, type Hole, newPlan, orderKeyAt, type Plan, type SitePoint } from '@loopwright/model';
import type { Page } from 'playwright-core';

const at = (x: number, y: number): SitePoint => ({ x, y });

/** Where each lies: one runs east for 360 m, two north for 350, three west for 350, four south for 300. */
export const LAID = {
  one: { tee: at(-300, -300), green: at(60, -300), bearing: Math.PI / 2 },
  two: { tee: at(300, -200), green: at(300, 150), bearing: 0 },
  three: { tee: at(200, 300), green: at(-150, 300), bearing: (3 * Math.PI) / 2 },
  four: { tee: at(-300, 200), green: at(-300, -100), bearing: Math.PI },
} as const;
export type LaidHole = keyof typeof LAID;
export const NAMES: readonly LaidHole[] = ['one', 'two', 'three', 'four'];

/** Metres along and across of every green: as new ones are drawn. */
export const GREEN = { length: 30, width: 24 } as const;

export function fourHoles(): Plan {
  let ids = 0;
  const plan = newPlan({ name: 'Made-up Moor', units: 'metres', holes: 18, freshId: (letter) => `${letter}${ids++}` });
  const [routing] = plan.routings;
  const [out, ...others] = routing?.loops ?? [];
  if (!routing || !out) throw new Error('a new plan has a routing of two loops');
  const holes = NAMES.map((name, index) => holeOn(name, { in: 'loop', loop: out.id, key: orderKeyAt(index) }));
  const inIdOrder = [...holes].sort((a, b) => (a.id < b.id ? -1 : 1));
  return {
    ...plan,
    routings: [{ ...routing, loops: [{ ...out, holes: [...NAMES] }, ...others], holes: inIdOrder }],
  };
}

function holeOn(id: LaidHole, seat: Hole['seat']): Hole {
  const { tee, green, bearing } = LAID[id];
  return {
    id,
    seat,
    tees: { back: tee },
    turnPoints: [],
    green: { centre: green, ...GREEN, bearing },
    par: { men: 'by length', women: 'by length' },
    verdict: 'undecided',
    pinned: [],
    waypoints: [],
    relations: [],
  };
}

/** One hole of the first routing. */
export function holeIn(plan: Plan, id: string): Hole & { readonly green: Green } {
  const hole = plan.routings[0]?.holes.find((one) => one.id === id);
  if (!hole?.green) throw new Error(`no ${id} with a green`);
  return { ...hole, green: hole.green };
}

export const bead = (page: Page, hole: string) => page.locator(`li[data-hole="${hole}"] .bead__button`);

/** What undo would take back, by its button in the head. */
export async function undoName(page: Page): Promise<string> {
  const button = page.locator('.steps').getByRole('button', { name: /^(Undo|Nothing to undo)/ });
  return ((await button.getAttribute('aria-label')) ?? '').replace(/^Undo /, '');
}
