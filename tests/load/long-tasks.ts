// Work that holds the page up: tasks of 50 ms and more on its main thread, as the browser itself reports them.
import type { Page } from 'playwright-core';

interface Watching {
  readonly longTasks: number[];
}

/** Notes long tasks from now on. */
export async function watchLongTasks(page: Page): Promise<void> {
  await page.evaluate(() => {
    const longTasks: number[] = [];
    Object.assign(window, { longTasks });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) longTasks.push(duration);
    }).observe({ type: 'longtask' });
  });
}

/** Those since they are watched, in milliseconds. */
export const longTasksOf = (page: Page): Promise<readonly number[]> =>
  page.evaluate(() => (window as unknown as Watching).longTasks);
