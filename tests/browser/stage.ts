import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll } from 'vitest';
import { openBrowser, type Served, serve } from './served-board.ts';

export interface Stage {
  readonly served: Served;
  readonly browser: Browser;
}

/** One server and one browser for all tests of a file: started before the first, ended after the last. */
export function openStage(): Stage {
  let served: Served | undefined;
  let browser: Browser | undefined;
  beforeAll(async () => {
    served = await serve();
    browser = await openBrowser();
  });
  // Each by itself: a browser that does not open must not leave its server behind.
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });
  afterEach(async ({ task }) => {
    if (task.result?.state === 'fail' && browser) await picturesOf(browser, task.name);
  });
  return {
    get served() {
      return opened(served);
    },
    get browser() {
      return opened(browser);
    },
  };
}

/** Where a folder is named by `SHOTS`: a picture of every page that stands open when a test fails. */
async function picturesOf(browser: Browser, test: string): Promise<void> {
  const folder = process.env.SHOTS;
  if (!folder) return;
  const pages = browser.contexts().flatMap((context) => context.pages());
  const name = test.replace(/\W+/g, '-').slice(0, 60);
  for (const [index, page] of pages.entries()) {
    await page.screenshot({ path: join(folder, `failed-${name}-${index}.png`) });
  }
}

function opened<Thing>(thing: Thing | undefined): Thing {
  if (thing === undefined) throw new Error('the stage opens before the first test, not earlier');
  return thing;
}
