// What the tasks of a day take, in clicks, taps and keys: held to apps/board/TASKS.md, each done to its end.
import type { SketchShape } from '@loopwright/model';
import { afterEach, expect, test } from 'vitest';
import { beadLength, boardShown, drag, movedBy, pixelOf, playingOrder, savedWords } from './board-page.ts';
import { type CountedHand, mouseHand, touchHand } from './counted-hand.ts';
import { bead, fourHoles, holeIn, LAID, NAMES, undoName } from './four-holes.ts';
import { savedPlan } from './saved-plan.ts';
import { makeBoard, type Person, person } from './served-board.ts';
import { expectNear } from './site-by-hand.ts';
import { openStage } from './stage.ts';
import { type By, expectTask } from './tasks-page.ts';

const WITHIN = { timeout: 10_000, interval: 20 };
const HAND = 2.5;
const at = (x: number, y: number) => ({ x, y });

const stage = openStage();
let here: readonly Person[] = [];
afterEach(async () => {
  const troubles = here.flatMap((one) => one.troubles);
  await Promise.all(here.map(({ context }) => context.close()));
  here = [];
  expect(troubles).toEqual([]);
});

async function handOn(by: By): Promise<CountedHand> {
  const link = await makeBoard(stage.served, fourHoles());
  const one = await person(stage.browser, link, 'Ada', { hasTouch: by === 'touch' });
  here = [...here, one];
  await boardShown(one.page);
  await one.page.getByRole('toolbar', { name: 'Instruments' }).waitFor();
  await expect.poll(() => savedWords(one.page), WITHIN).toContain('saved on the server');
  if (by === 'keyboard') await one.page.getByTestId('drawing').focus();
  return by === 'touch' ? touchHand(one.page) : mouseHand(one.page);
}

/** Everything as it was: nothing in the hand, nothing chosen, no step of mine. */
async function afresh({ page }: CountedHand): Promise<void> {
  await page.getByTestId('drawing').focus();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  // Steps may be of one name, so that it does not tell when one is undone; one press too many does nothing.
  while ((await undoName(page)) !== 'Nothing to undo') await page.keyboard.press('Control+z');
  await expect.poll(() => playingOrder(page), WITHIN).toEqual(NAMES);
}

/** Does a task, and holds what it took to the page. */
async function task(words: string, by: By, hand: CountedHand, does: () => Promise<void>): Promise<void> {
  const before = hand.count();
  await does();
  expectTask(words, by, hand.count() - before);
}

const instrument = ({ page }: CountedHand, name: string) =>
  page.getByRole('toolbar', { name: 'Instruments' }).getByRole('button', { name, exact: true });

const undoIs = ({ page }: CountedHand, name: string) => expect.poll(() => undoName(page), WITHIN).toBe(name);

async function sketches({ page }: CountedHand): Promise<readonly SketchShape[]> {
  return ((await savedPlan(page)).site.sketches ?? []).map(({ shape }) => shape);
}

/** The menu of the first hole of the round, from the drawing. */
async function menuByKeys(hand: CountedHand): Promise<void> {
  await hand.key(']');
  await hand.key('Shift+F10');
  await hand.page.getByRole('menu', { name: /^What to do with/ }).waitFor();
}

/** The second button on the line of the first hole. */
async function menuByMouse(hand: CountedHand): Promise<void> {
  const { x, y } = await pixelOf(hand.page, at(LAID.one.tee.x + 90, LAID.one.tee.y));
  await hand.page.mouse.move(x, y);
  await hand.page.mouse.click(x, y, { button: 'right' });
  hand.counted(1);
}

type Pressing = Exclude<By, 'keyboard'>;

async function betweenTwo(hand: CountedHand, by: Pressing): Promise<void> {
  await task('draw a hole between two', by, hand, async () => {
    await hand.on(bead(hand.page, 'two'));
    await hand.on(hand.page.getByRole('button', { name: 'What to do with hole 2' }));
    await hand.on(hand.page.getByRole('menuitem', { name: 'Draw a new hole after it' }));
    await hand.at(at(150, -50));
    await hand.at(at(-100, -50), 2);
  });
  await expect.poll(() => playingOrder(hand.page).then(({ length }) => length), WITHIN).toBe(5);
  const [one, two, drawn = '', ...others] = await playingOrder(hand.page);
  expect([one, two, ...others]).toEqual(NAMES);
  expect(Math.abs((await beadLength(hand.page, drawn)) - 250)).toBeLessThanOrEqual(2 * HAND);
}

async function ringAndMeasure(hand: CountedHand, by: Pressing): Promise<void> {
  await task('put a clearance ring', by, hand, async () => {
    await hand.on(instrument(hand, 'Clearance ring'));
    await hand.at(LAID.two.green);
  });
  expect(await sketches(hand)).toMatchObject([{ kind: 'ring', radius: 30, about: { hole: 'two', part: 'green' } }]);
  await task('measure a line', by, hand, async () => {
    await hand.on(instrument(hand, 'Measure line'));
    await hand.at(at(-100, 0));
    await hand.at(at(100, 0), 2);
  });
  const line = (await sketches(hand)).find(({ kind }) => kind === 'measured line');
  if (line?.kind !== 'measured line') throw new Error('no measure');
  expectNear(line.points[0], at(-100, 0), HAND);
  expectNear(line.points[1], at(100, 0), HAND);
}

async function putBack(hand: CountedHand, by: Pressing): Promise<void> {
  await task('put back what was tried', by, hand, async () => {
    await hand.on(hand.page.getByRole('button', { name: 'Put back what was tried' }));
    await hand.on(hand.page.getByRole('menuitem').last());
  });
  await expect.poll(() => sketches(hand), WITHIN).toEqual([]);
}

const routingShown = ({ page }: CountedHand) => page.getByRole('button', { name: /^Routing:/ });
const routingIs = (hand: CountedHand, name: string) =>
  expect.poll(() => routingShown(hand).getAttribute('aria-label'), WITHIN).toBe(`Routing: ${name}`);

async function copyAndFlip(hand: CountedHand, by: Pressing): Promise<void> {
  await task('copy a routing and flip', by, hand, async () => {
    await hand.on(routingShown(hand));
    await hand.on(hand.page.getByRole('menuitem', { name: 'Copy as …' }));
    await hand.on(hand.page.getByRole('button', { name: 'Copy', exact: true }));
    await routingIs(hand, 'Routing B');
    await hand.on(routingShown(hand));
    await hand.on(hand.page.getByRole('menuitem', { name: /^Flip/ }));
  });
  await routingIs(hand, 'Routing A');
  const { routings } = await savedPlan(hand.page);
  expect(routings.map(({ name }) => name)).toEqual(['A', 'B']);
  expect(routings[1]?.holes).toHaveLength(4);
}

test('by touch', async () => {
  const hand = await handOn('touch');
  await betweenTwo(hand, 'touch');
  await afresh(hand);
  await ringAndMeasure(hand, 'touch');
  await putBack(hand, 'touch');
  await copyAndFlip(hand, 'touch');
});

test('by mouse', async () => {
  const hand = await handOn('mouse');
  const { page } = hand;
  await betweenTwo(hand, 'mouse');
  await afresh(hand);

  await task('renumber a hole', 'mouse', hand, async () => {
    // Beads slide to their places: the hand waits over one until it rests.
    await page.locator('li[data-hole="four"] .bead__disc').hover();
    const to = await page.locator('li[data-hole="two"]').boundingBox();
    if (!to) throw new Error('no bead');
    await page.mouse.down();
    await page.mouse.move(to.x + 20, to.y + 4, { steps: 10 });
    await page.mouse.up();
    hand.counted(1);
  });
  await expect.poll(() => playingOrder(page), WITHIN).toEqual(['one', 'four', 'two', 'three']);
  await afresh(hand);

  await task('put a dogleg in', 'mouse', hand, async () => {
    await hand.on(bead(page, 'one'));
    const grip = at(LAID.one.tee.x + 0.38 * 360, LAID.one.tee.y);
    await drag(page, grip, movedBy(grip, 0, 60));
    hand.counted(1);
  });
  await undoIs(hand, 'turn added to hole 1');
  await afresh(hand);

  await task('lengthen a hole by 20 m', 'mouse', hand, async () => {
    await menuByMouse(hand);
    await hand.on(page.getByRole('menuitem', { name: /^Lengthen/ }));
    await page.getByRole('dialog').waitFor();
    await hand.type('+20');
    await hand.key('Enter');
  });
  await expect.poll(() => beadLength(page, 'one'), WITHIN).toBe(380);
  await afresh(hand);

  await task('exchange two corridors', 'mouse', hand, async () => {
    await menuByMouse(hand);
    await hand.on(page.getByRole('menuitem', { name: /^Exchange/ }));
    await hand.on(page.getByRole('menuitem', { name: /^Hole 3/ }));
  });
  await undoIs(hand, 'exchange of corridors 1 and 3');
  await afresh(hand);

  await ringAndMeasure(hand, 'mouse');
  await putBack(hand, 'mouse');
  await copyAndFlip(hand, 'mouse');
});

test('by keyboard: holes', async () => {
  const hand = await handOn('keyboard');
  const { page } = hand;
  await task('draw a hole between two', 'keyboard', hand, async () => {
    await hand.key(']');
    await menuByKeys(hand);
    await hand.keyTo('ArrowDown', /^Draw a new hole/);
    await hand.key('Enter');
    for (const words of ['(150, -50)', '250@270']) {
      await hand.type(words);
      await hand.key('Enter');
    }
    await hand.key('Enter');
  });
  await expect.poll(() => playingOrder(page).then(({ length }) => length), WITHIN).toBe(5);
  expect(await beadLength(page, (await playingOrder(page))[2] ?? '')).toBe(250);
  await afresh(hand);

  await task('put a dogleg in', 'keyboard', hand, async () => {
    await menuByKeys(hand);
    await hand.keyTo('ArrowDown', /^Put a turn point in/);
    await hand.key('Enter');
    for (let press = 0; press < 6; press++) await hand.key('Shift+ArrowUp');
  });
  // From the middle of the leg, six times ten metres north.
  expect(holeIn(await savedPlan(page), 'one').turnPoints[0]?.at).toEqual(at(-120, -240));
  await afresh(hand);

  await task('lengthen a hole by 20 m', 'keyboard', hand, async () => {
    await menuByKeys(hand);
    await hand.keyTo('ArrowDown', /^Lengthen/);
    await hand.key('Enter');
    await page.getByRole('dialog').waitFor();
    await hand.type('+20');
    await hand.key('Enter');
  });
  await expect.poll(() => beadLength(page, 'one'), WITHIN).toBe(380);
  await afresh(hand);

  await task('exchange two corridors', 'keyboard', hand, async () => {
    await menuByKeys(hand);
    await hand.type('e');
    await hand.key('ArrowRight');
    await hand.keyTo('ArrowDown', /^Hole 3/);
    await hand.key('Enter');
  });
  await undoIs(hand, 'exchange of corridors 1 and 3');
  await afresh(hand);

  await bead(page, 'four').focus();
  await task('renumber a hole', 'keyboard', hand, async () => {
    for (const key of ['Enter', 'ArrowUp', 'ArrowUp', 'Enter']) await hand.key(key);
  });
  await expect.poll(() => playingOrder(page), WITHIN).toEqual(['one', 'four', 'two', 'three']);
});

test('by keyboard: sketches, steps and routings', async () => {
  const hand = await handOn('keyboard');
  const { page } = hand;
  await task('put a clearance ring', 'keyboard', hand, async () => {
    for (const key of ['c', 'ArrowUp', ' ']) await hand.key(key);
  });
  await page.keyboard.press('Escape');
  await task('measure a line', 'keyboard', hand, async () => {
    await hand.key('l');
    for (const words of ['(-100, 0)', '200@90']) {
      await hand.type(words);
      await hand.key('Enter');
    }
    await hand.key('Enter');
  });
  expect(await sketches(hand)).toMatchObject([
    { kind: 'ring', radius: 30 },
    { kind: 'measured line', points: [at(-100, 0), at(100, 0)] },
  ]);
  await page.getByTestId('drawing').focus();
  await task('put back what was tried', 'keyboard', hand, async () => {
    await hand.keyTo('Shift+Tab', /^Put back what was tried/);
    await hand.key('Enter');
    await page.getByRole('menu', { name: 'Put back what was tried' }).waitFor();
    for (const key of ['End', 'Enter']) await hand.key(key);
  });
  await expect.poll(() => sketches(hand), WITHIN).toEqual([]);

  await page.getByTestId('drawing').focus();
  await task('copy a routing and flip', 'keyboard', hand, async () => {
    await hand.keyTo('Shift+Tab', /^Routing:/);
    await hand.key('Enter');
    await hand.keyTo('ArrowDown', /^Copy as/);
    await hand.key('Enter');
    await page.getByRole('dialog').waitFor();
    await hand.key('Enter');
    await routingIs(hand, 'Routing B');
    await hand.key('v');
  });
  await routingIs(hand, 'Routing A');
});
