// axe on every state of the page: no violation of WCAG 2.2 A and AA.
import { demoPlan } from '@loopwright/demo';
import { expect, test } from 'vitest';
import { smallTargets, violations } from './axe-violations.ts';
import { boardShown, drag, movedBy, openSheet, placeOf } from './board-page.ts';
import { makeBoard, person } from './served-board.ts';
import { openStage } from './stage.ts';

const PLAN = demoPlan();
const HOLE = PLAN.routings[0]?.loops[0]?.holes[3] ?? '';
const GREEN = placeOf(PLAN, HOLE, 'green');

const stage = openStage();

test('the start page: empty, a picture chosen, a problem, a course ready, on a telephone', async () => {
  const context = await stage.browser.newContext();
  const page = await context.newPage();
  await page.goto(stage.served.address);
  expect(await violations(page), 'empty').toEqual([]);
  const [picture, course] = [page.locator('input[accept*=png]'), page.locator('input[accept*=geojson]')];
  await picture.setInputFiles({ name: 'plan.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
  await page.getByText('laid on the board as soon as it is open').waitFor();
  expect(await violations(page), 'a picture').toEqual([]);
  await course.setInputFiles({ name: 'a.geojson', mimeType: 'text/plain', buffer: Buffer.from('no') });
  await page.getByRole('alert').waitFor();
  expect(await violations(page), 'a problem').toEqual([]);
  const file = JSON.stringify(PLAN);
  await course.setInputFiles({ name: 'plan.json', mimeType: 'application/json', buffer: Buffer.from(file) });
  await page.getByRole('button', { name: 'Make the board' }).last().waitFor();
  await page.setViewportSize({ width: 390, height: 844 });
  expect([...(await violations(page)), ...(await smallTargets(page))], 'a course ready').toEqual([]);
  await context.close();
});

test('the door: asking for a name, and a link that does not open', async () => {
  const context = await stage.browser.newContext();
  const page = await context.newPage();
  await page.goto(await makeBoard(stage.served, PLAN));
  await page.getByLabel(/Your name/).waitFor();
  expect(await violations(page)).toEqual([]);
  await page.getByLabel(/Your name/).fill('Ada');
  await page.getByRole('button', { name: 'Enter' }).click();
  await boardShown(page);
  await page.goto('about:blank');
  await page.goto(`${stage.served.address}/b/bnowhere00#nosuchsecretnosuchsecret`);
  await page.getByRole('alert').waitFor();
  expect(await violations(page)).toEqual([]);
  await context.close();
});

test('the board: every sheet, after a change, with a hole chosen, the keys open, and two sheets side by side', async () => {
  const { context, page } = await person(stage.browser, await makeBoard(stage.served, PLAN), 'Ada');
  await boardShown(page);
  await drag(page, GREEN, movedBy(GREEN, -20, 90));
  for (const sheet of ['Card', 'Findings', 'What changed', 'Limits', 'Holes and points']) {
    await openSheet(page, sheet);
    expect(await violations(page), sheet).toEqual([]);
  }
  await openSheet(page, 'Findings');
  await page
    .getByRole('button', { name: /^Decide about/ })
    .first()
    .click();
  expect(await violations(page), 'deciding').toEqual([]);
  await page.locator(`li[data-hole="${HOLE}"] .bead__button`).click();
  expect(await violations(page), 'a hole chosen').toEqual([]);
  await page.getByTestId('drawing').focus();
  await page.keyboard.press('?');
  await page.getByRole('dialog').waitFor();
  expect(await violations(page), 'keys').toEqual([]);
  await context.close();
});

test('the board on a telephone and on a wide screen', async () => {
  const { context, page } = await person(stage.browser, await makeBoard(stage.served, PLAN), 'Ada');
  await boardShown(page);
  for (const size of [
    { width: 390, height: 844 },
    { width: 1920, height: 1080 },
  ]) {
    await page.setViewportSize(size);
    expect(await violations(page), `${size.width}`).toEqual([]);
  }
  await context.close();
});

test('an empty board says what to do', async () => {
  const { context, page } = await person(stage.browser, await makeBoard(stage.served), 'Ada');
  await page.getByRole('main').waitFor();
  expect(await violations(page)).toEqual([]);
  await context.close();
});
