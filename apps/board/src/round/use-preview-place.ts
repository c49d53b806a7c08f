import { type RefObject, useLayoutEffect } from 'react';
import type { Held } from './use-bead-hand.ts';

/** Kept free above and below, in pixels. */
const MARGIN = 8;

/**
 * Lays the preview beside the bead in hand, over the drawing: the string itself is what the hand needs to see. It
 * follows the bead's place on the string and never leaves the window.
 */
export function usePreviewPlace(
  string: RefObject<HTMLElement | null>,
  card: RefObject<HTMLDivElement | null>,
  held: Held | undefined,
  order: string,
) {
  // biome-ignore lint/correctness/useExhaustiveDependencies: the order is what moves the bead
  useLayoutEffect(() => {
    const bead = held && string.current?.querySelector(`[data-hole="${CSS.escape(held.hole)}"]`);
    if (!bead || !card.current) return;
    const { top } = bead.getBoundingClientRect();
    const { right } = (bead.closest('.round') ?? bead).getBoundingClientRect();
    const lowest = window.innerHeight - card.current.offsetHeight - MARGIN;
    const widest = window.innerWidth - card.current.offsetWidth - MARGIN;
    card.current.style.top = `${Math.max(MARGIN, Math.min(top, lowest))}px`;
    card.current.style.left = `${Math.max(MARGIN, Math.min(right + MARGIN, widest))}px`;
  }, [string, card, held, order]);
}
