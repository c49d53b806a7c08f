import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { playSeed } from './run.ts';

/** Seeds of a normal run; with LONG=1 many more. SEED=n plays that one alone. */
const SEEDS = process.env.LONG ? 5000 : 200;
const ONLY = process.env.SEED;
const seeds = ONLY ? [Number(ONLY)] : Array.from({ length: SEEDS }, (_, index) => index + 1);

beforeAll(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval', 'Date'] });
  process.setMaxListeners(100); // each page's connection hears of the end of the process
});
afterAll(() => {
  vi.useRealTimers();
});

test(`${seeds.length} boards of 3 to 5 pages end with one plan, whatever the network does`, async () => {
  const failed: string[] = [];
  for (const seed of seeds) {
    const wrong = await playSeed(seed, (milliseconds) => vi.advanceTimersByTimeAsync(milliseconds));
    if (wrong.length > 0) failed.push(`seed ${seed} (SEED=${seed} plays it alone): ${[...new Set(wrong)].join('; ')}`);
    if (failed.length >= 5) break;
  }
  expect(failed).toEqual([]);
});
