import type { Reach } from './model-player.ts';

export interface FullShots {
  /** Metres from the tee where each full shot finishes, tee shot first; none where the tee shot reaches the green. */
  readonly finishes: readonly number[];
  /** What is left into the green after them. */
  readonly left: number;
}

/** No hole worth the name takes more; keeps a line of nonsense length from counting for ever. */
const MOST_SHOTS = 8;

/**
 * A model player's full shots on a hole, and the approach they leave.
 *
 * Par less three full shots come before the approach (par 4: one, par 5: two); fewer when the green is in reach
 * before, more when what is left is out of reach (a par 4 that the bogey player plays in three).
 *
 * @param length  measured length from the player's tee, metres
 * Source: Course Rating System Manual §9: par 4 leaves length − 250 yd, par 5 length − 470 yd [women 210, 400];
 * bogey length − 200 or − 370 yd [150, 280], − 540 [410].
 */
export function fullShots(length: number, par: number, reach: Reach): FullShots {
  const finishes: number[] = [];
  let left = length;
  while (finishes.length < MOST_SHOTS) {
    const next = finishes.length === 0 ? reach.drive : reach.second;
    const furthest = finishes.length < par - 3 ? next : next * reach.stretch;
    if (left <= furthest) break;
    left -= next;
    finishes.push(length - left);
  }
  return { finishes, left };
}
