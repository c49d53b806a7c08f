import type { SitePoint } from '@loopwright/model';

/** Numbers in [0, 1), seeded. */
export type Random = () => number;

/** One of a list by chance. */
export function pick<T>(list: readonly T[], random: Random): T | undefined {
  return list[Math.floor(random() * list.length)];
}

/** A place on a square of two kilometres. */
export function somewhere(random: Random): SitePoint {
  return { x: Math.round(random() * 2_000_000) / 1000, y: Math.round(random() * 2_000_000) / 1000 };
}
