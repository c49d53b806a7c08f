/**
 * Time for a walk by the old rule of hill walkers, seconds: one hour for 5 km and one for 600 m of ascent.
 * A second opinion on the walking times; the card does not use it.
 *
 * @param distance  horizontal, metres
 * @param climb  sum of all ascents, metres
 * Source: W. Naismith (1892), in its metric form.
 */
export function naismithTime(distance: number, climb: number): number {
  return (distance / 5000 + climb / 600) * 3600;
}
