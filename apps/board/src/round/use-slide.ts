import { type RefObject, useLayoutEffect, useRef } from 'react';

const SLIDE = { duration: 160, easing: 'ease-out' } as const;

/**
 * Beads slide to their new places when the order changes, unless the person prefers no motion.
 *
 * @param order  says the order in one word; nothing is measured while it stays the same
 */
export function useSlide(string: RefObject<HTMLElement | null>, order: string) {
  const places = useRef(new Map<string, number>());
  // biome-ignore lint/correctness/useExhaustiveDependencies: the order is what moves the beads
  useLayoutEffect(() => {
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    for (const bead of string.current?.querySelectorAll<HTMLElement>('[data-hole]') ?? []) {
      const hole = bead.dataset.hole ?? '';
      const before = places.current.get(hole);
      places.current.set(hole, bead.offsetTop);
      const by = (before ?? bead.offsetTop) - bead.offsetTop;
      if (by !== 0 && !still) bead.animate([{ transform: `translateY(${by}px)` }, { transform: 'none' }], SLIDE);
    }
  }, [string, order]);
}
