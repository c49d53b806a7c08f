import { distanceBetween, unitVector } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';

/** A straight piece of a line of play. */
export interface Leg {
  readonly a: SitePoint;
  readonly towards: SitePoint;
  readonly length: number;
  /** Metres from the tee to its start. */
  readonly before: number;
}

/** The straight pieces of a line; pieces of no length are left out. */
export function legsOf(line: readonly SitePoint[]): readonly Leg[] {
  const legs: Leg[] = [];
  let before = 0;
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1];
    const b = line[i];
    const towards = a && b && unitVector(a, b);
    if (!towards) continue;
    const length = distanceBetween(a, b);
    legs.push({ a, towards, length, before });
    before += length;
  }
  return legs;
}
