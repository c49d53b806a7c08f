import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
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
  return {
    get served() {
      return opened(served);
    },
    get browser() {
      return opened(browser);
    },
  };
}

function opened<Thing>(thing: Thing | undefined): Thing {
  if (thing === undefined) throw new Error('the stage opens before the first test, not earlier');
  return thing;
}
