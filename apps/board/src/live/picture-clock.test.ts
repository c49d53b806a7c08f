import { expect, test } from 'vitest';
import { openPictureClock } from './picture-clock.ts';

function fakeClock() {
  let waiting: (() => void)[] = [];
  const clock = {
    requestAnimationFrame: (work: () => void) => waiting.push(work),
    cancelAnimationFrame: (handle: number) => {
      waiting[handle - 1] = () => undefined;
    },
  };
  const picture = () => {
    const now = waiting;
    waiting = [];
    for (const work of now) work();
  };
  return { clock, picture };
}

test('the first work after a picture is done before the next; more waits for it', async () => {
  const { clock, picture } = fakeClock();
  const { soon: before } = openPictureClock(clock);
  const did: string[] = [];
  before(() => did.push('first'));
  expect(did).toEqual([]);
  await Promise.resolve();
  before(() => did.push('second'));
  await Promise.resolve();
  expect(did).toEqual(['first']);
  picture();
  expect(did).toEqual(['first', 'second']);
  before(() => did.push('third'));
  await Promise.resolve();
  expect(did).toEqual(['first', 'second', 'third']);
});

test('work that was called off is not done', async () => {
  const { clock, picture } = fakeClock();
  const { soon: before } = openPictureClock(clock);
  const did: string[] = [];
  before(() => did.push('first'))();
  await Promise.resolve();
  before(() => did.push('second'))();
  picture();
  expect(did).toEqual([]);
});

test('what comes in between two pictures waits for the next one', async () => {
  const { clock, picture } = fakeClock();
  const { later } = openPictureClock(clock);
  const did: string[] = [];
  later(() => did.push('first'));
  later(() => did.push('second'))();
  await Promise.resolve();
  expect(did).toEqual([]);
  picture();
  expect(did).toEqual(['first']);
});

test('a picture that has its work already takes in nothing more', async () => {
  const { clock, picture } = fakeClock();
  const { soon, later } = openPictureClock(clock);
  const did: string[] = [];
  soon(() => did.push('my move'));
  await Promise.resolve();
  later(() => did.push('others'));
  later(() => did.push('nobody'))();
  picture();
  expect(did).toEqual(['my move']);
  picture();
  expect(did).toEqual(['my move', 'others']);
});
