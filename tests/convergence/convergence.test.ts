import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { playSeed } from './run.ts';

/** Seeds of a normal run; with LONG=1 many more. SEED=n plays that one alone, SEEDS=n and FROM=n so many from there. */
const SEEDS = Number(process.env.SEEDS ?? (process.env.LONG ? 5000 : 200));
const FROM = Number(process.env.SEED ?? process.env.FROM ?? 1);
const seeds = Array.from({ length: process.env.SEED ? 1 : SEEDS }, (_, index) => FROM + index);
/** Milliseconds: a quarter of a minute and half a second a seed, on a slow machine with others at work. */
const TIMEOUT = 15_000 + 500 * seeds.length;

beforeAll(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval', 'Date'] });
  process.setMaxListeners(100); // each page's connection hears of the end of the process
});
afterAll(() => {
  vi.useRealTimers();
});

test(
  `${seeds.length} boards of 3 to 5 pages end with one plan, whatever the network does`,
  async () => {
    const failed: string[] = [];
    for (const seed of seeds) {
      const wrong = await playSeed(seed, (milliseconds) => vi.advanceTimersByTimeAsync(milliseconds));
      if (wrong.length > 0)
        failed.push(`seed ${seed} (SEED=${seed} plays it alone): ${[...new Set(wrong)].join('; ')}`);
      if (failed.length >= 5) break;
    }
    expect(failed).toEqual([]);
  },
  TIMEOUT,
);
