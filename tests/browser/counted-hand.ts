// A person's hand on the page that counts what it does: clicks, taps and keys, as apps/board/TASKS.md writes them.
import type { SitePoint } from '@loopwright/model';
import type { Locator, Page } from 'playwright-core';
import { pixelOf } from './board-page.ts';

export interface CountedHand {
  readonly page: Page;
  /** Clicks, taps and keys so far; a drag is one, moving the mouse none. */
  count(): number;
  /** What was done besides, by the page's own mouse: a drag, say. */
  counted(actions: number): void;
  /** A click or a tap on something with a name. */
  on(target: Locator): Promise<void>;
  /** On the drawing, so many times in quick succession. */
  at(place: SitePoint, times?: 1 | 2): Promise<void>;
  /** One of a list that opens: two presses. */
  choose(list: Locator, value: string): Promise<void>;
  key(name: string): Promise<void>;
  /** Letter by letter: each is a key. */
  type(words: string): Promise<void>;
  /** A key again and again, until what has this name has the keyboard. */
  keyTo(key: 'Tab' | 'Shift+Tab' | 'ArrowUp' | 'ArrowDown', name: RegExp): Promise<void>;
}

/** Longer than the longest way from one end of the page to the other. */
const MOST_STEPS = 120;

export function mouseHand(page: Page): CountedHand {
  return handOf(page, {
    on: (target) => target.click(),
    at: async ({ x, y }, times) => {
      await page.mouse.move(x, y, { steps: 3 });
      await page.mouse.click(x, y, { clickCount: times });
    },
  });
}

/** The page must be of a context that has touch. */
export function touchHand(page: Page): CountedHand {
  return handOf(page, {
    on: (target) => target.tap(),
    at: async ({ x, y }, times) => {
      for (let tap = 0; tap < times; tap++) await page.touchscreen.tap(x, y);
    },
  });
}

interface HandParts {
  readonly on: (target: Locator) => Promise<void>;
  readonly at: (place: { readonly x: number; readonly y: number }, times: 1 | 2) => Promise<void>;
}

function handOf(page: Page, parts: HandParts): CountedHand {
  let count = 0;
  const key = async (name: string) => {
    await page.keyboard.press(name);
    count += 1;
  };
  return {
    page,
    count: () => count,
    counted: (actions) => {
      count += actions;
    },
    on: async (target) => {
      await parts.on(target);
      count += 1;
    },
    at: async (place, times = 1) => {
      await parts.at(await pixelOf(page, place), times);
      count += times;
    },
    choose: async (list, value) => {
      await list.selectOption(value);
      count += 2;
    },
    key,
    type: async (words) => {
      for (const letter of words) await key(letter);
    },
    keyTo: async (step, name) => {
      for (let steps = 0; steps < MOST_STEPS; steps++) {
        await key(step);
        if (name.test(await focusedName(page))) return;
      }
      throw new Error(`the keyboard never came to ${name}`);
    },
  };
}

/** What a screen reader would call what has the keyboard, near enough: its label, its own words. */
export async function focusedName(page: Page): Promise<string> {
  return page.evaluate(() => {
    const at = document.activeElement;
    const labels = at instanceof HTMLInputElement ? [...(at.labels ?? [])].map((label) => label.textContent) : [];
    return [at?.getAttribute('aria-label'), ...labels, at?.textContent].filter(Boolean).join(' ');
  });
}
