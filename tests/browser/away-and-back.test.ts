// Bad days: no network, a killed server, a tab that is gone. The plan is what was saved, plus nothing invented.
import { demoPlan } from '@loopwright/demo';

import { expect, test } from 'vitest';
import { beadLength, boardShown, drag, movedBy, placeOf, savedWords, takeAndMove } from './board-page.ts';
import { makeBoard, person } from './served-board.ts';
import { openStage } from './stage.ts';

const PLAN = demoPlan();
const HOLE = PLAN.routings[0]?.loops[0]?.holes[3] ?? '';
const GREEN = placeOf(PLAN, HOLE, 'green');
const WITHIN = { timeout: 30_000, interval: 50 };

const stage = openStage();

test('work done offline is kept, said to be kept, and reaches the others after coming back', async () => {
  const link = await makeBoard(stage.served, PLAN);
  const ada = await person(stage.browser, link, 'Ada');
  const ben = await person(stage.browser, link, 'Ben');
  await Promise.all([boardShown(ada.page), boardShown(ben.page)]);
  const before = await beadLength(ben.page, HOLE);
  await expect.poll(() => savedWords(ada.page), WITHIN).toContain('saved on the server');

  await ada.context.setOffline(true);
  await stage.served.kill();
  await expect.poll(() => savedWords(ada.page), WITHIN).toContain('offline');
  await drag(ada.page, GREEN, movedBy(GREEN, 5, 60));
  await expect.poll(() => beadLength(ada.page, HOLE), WITHIN).not.toBe(before);
  await expect.poll(() => savedWords(ada.page), WITHIN).toContain('1 change waiting');
  const there = await beadLength(ada.page, HOLE);

  await stage.served.restart();
  await ada.context.setOffline(false);
  await expect.poll(() => beadLength(ben.page, HOLE), WITHIN).toBe(there);
  await expect.poll(() => savedWords(ada.page), WITHIN).toContain('saved on the server');
  await Promise.all([ada.context.close(), ben.context.close()]);
});

test('a page closed while offline still has its work when it is opened again', async () => {
  const link = await makeBoard(stage.served, PLAN);
  const ada = await person(stage.browser, link, 'Ada');
  await boardShown(ada.page);
  const before = await beadLength(ada.page, HOLE);
  await expect.poll(() => savedWords(ada.page), WITHIN).toContain('saved on the server');
  await stage.served.kill();
  await expect.poll(() => savedWords(ada.page), WITHIN).toContain('offline');
  await drag(ada.page, GREEN, movedBy(GREEN, 5, 60));
  await expect.poll(() => savedWords(ada.page), WITHIN).toContain('kept on this machine, 1 change waiting');
  const there = await beadLength(ada.page, HOLE);
  expect(there).not.toBe(before);
  await ada.page.close();

  await stage.served.restart();
  const again = await ada.context.newPage();
  await again.goto(link);
  await boardShown(again);
  await expect.poll(() => beadLength(again, HOLE), WITHIN).toBe(there);
  await expect.poll(() => savedWords(again), WITHIN).toContain('saved on the server');
  const ben = await person(stage.browser, link, 'Ben');
  await boardShown(ben.page);
  await expect.poll(() => beadLength(ben.page, HOLE), WITHIN).toBe(there);
  await Promise.all([ada.context.close(), ben.context.close()]);
});

test('a tab killed in mid-drag leaves the plan as it was', async () => {
  const link = await makeBoard(stage.served, PLAN);
  const ada = await person(stage.browser, link, 'Ada');
  const ben = await person(stage.browser, link, 'Ben');
  await Promise.all([boardShown(ada.page), boardShown(ben.page)]);
  const before = await beadLength(ben.page, HOLE);
  await takeAndMove(ada.page, GREEN, movedBy(GREEN, 5, 60));
  await expect.poll(() => beadLength(ben.page, HOLE), WITHIN).not.toBe(before);
  await ada.context.close();
  await expect.poll(() => beadLength(ben.page, HOLE), WITHIN).toBe(before);
  await ben.context.close();
});

test('a board that was opened before opens without a server, says so, and merges when the server is back', async () => {
  const link = await makeBoard(stage.served, PLAN);
  const ada = await person(stage.browser, link, 'Ada');
  await boardShown(ada.page);
  const before = await beadLength(ada.page, HOLE);
  await expect.poll(() => savedWords(ada.page), WITHIN).toContain('saved on the server');
  await ada.page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await ada.page.close();
  await stage.served.kill();

  const again = await ada.context.newPage();
  await again.goto(link);
  await boardShown(again);
  await expect.poll(() => savedWords(again), WITHIN).toContain('offline');
  await drag(again, GREEN, movedBy(GREEN, 5, 60));
  await expect.poll(() => savedWords(again), WITHIN).toContain('kept on this machine, 1 change waiting');
  const there = await beadLength(again, HOLE);
  expect(there).not.toBe(before);

  await stage.served.restart();
  await expect.poll(() => savedWords(again), WITHIN).toContain('saved on the server');
  const ben = await person(stage.browser, link, 'Ben');
  await boardShown(ben.page);
  await expect.poll(() => beadLength(ben.page, HOLE), WITHIN).toBe(there);
  await Promise.all([ada.context.close(), ben.context.close()]);
});

test('without a server, a link that was never opened here opens nothing and says so', async () => {
  const link = await makeBoard(stage.served, PLAN);
  const ada = await person(stage.browser, link, 'Ada');
  await boardShown(ada.page);
  await ada.page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await ada.page.close();
  await stage.served.kill();
  const again = await ada.context.newPage();
  await again.goto(link.replace(/#.*/, '#another-secret'));
  await again.getByText('The server did not answer').waitFor();
  await stage.served.restart();
  await ada.context.close();
});
