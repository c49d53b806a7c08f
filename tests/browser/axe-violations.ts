import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** What axe finds against WCAG 2.2 A and AA on the page, or on a part of it, as rule and place. */
export async function violations(page: Page, part?: string): Promise<readonly string[]> {
  const axe = new AxeBuilder({ page }).withTags(RULES);
  const { violations: found } = await (part === undefined ? axe : axe.include(part)).analyze();
  return found.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
}

/**
 * Controls that can be pressed but are under 24 px high and wide: the target size of WCAG 2.2, 2.5.8. The walks between
 * two beads are lines of 11 px; the table of holes and points has them as large ones. The library's 'Dismiss' is cut
 * away from sight.
 */
export async function smallTargets(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const controls = document.querySelectorAll<HTMLElement>(
      'button:not(.thread__button, [aria-label=Dismiss]), select, summary, input:not([type=hidden]), textarea, [role=tab], [role=menuitem], [role=radio]',
    );
    return [...controls].flatMap((control) => {
      const label = control.closest('label');
      const box = (label ?? control).getBoundingClientRect();
      const own = control.getBoundingClientRect();
      const isSeen = own.width > 1 && own.height > 1 && control.checkVisibility({ visibilityProperty: true });
      if (!isSeen || Math.max(own.height, box.height) >= 23.5) {
        if (!isSeen || Math.max(own.width, box.width) >= 23.5) return [];
      }
      const words = control.getAttribute('aria-label') ?? control.textContent ?? '';
      return [`${control.className} ${words.trim().slice(0, 40)}: ${own.width.toFixed(0)} × ${own.height.toFixed(0)}`];
    });
  });
}
