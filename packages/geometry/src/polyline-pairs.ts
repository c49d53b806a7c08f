import type { SitePoint } from '@loopwright/model';
import { distanceBetween, pointBetween } from './point.ts';
import { type Apart, crossingShares, segmentsApart } from './segment.ts';

export interface PolylineCrossing {
  readonly at: SitePoint;
  /** Metres along the first line. */
  readonly alongFirst: number;
  /** Metres along the second line. */
  readonly alongSecond: number;
}

/**
 * Every place where two lines cross or touch, in order along the first.
 * A crossing at a bend is met once. Cost: legs × legs.
 */
export function polylineCrossings(a: readonly SitePoint[], b: readonly SitePoint[]): readonly PolylineCrossing[] {
  const found: PolylineCrossing[] = [];
  eachPairOfLegs(a, b, (a0, a1, beforeA, b0, b1, beforeB) => {
    const shares = crossingShares(a0, a1, b0, b1);
    if (!shares) return;
    const alongFirst = beforeA + shares.first * distanceBetween(a0, a1);
    const alongSecond = beforeB + shares.second * distanceBetween(b0, b1);
    if (found.some((other) => isSame(other, alongFirst, alongSecond))) return;
    found.push({ at: pointBetween(a0, a1, shares.first), alongFirst, alongSecond });
  });
  return found.sort((one, two) => one.alongFirst - two.alongFirst || one.alongSecond - two.alongSecond);
}

/** A bend is met by both of its legs, to within rounding: relative, so that any scale of drawing works. */
function isSame(other: PolylineCrossing, alongFirst: number, alongSecond: number): boolean {
  const near = (p: number, q: number) => Math.abs(p - q) <= 1e-12 * (Math.abs(p) + Math.abs(q));
  return near(other.alongFirst, alongFirst) && near(other.alongSecond, alongSecond);
}

/**
 * How far two lines lie apart, and where they come closest; 0 where they cross. Cost: legs × legs.
 *
 * @throws RangeError for an empty line: the caller's bug
 */
export function polylinesApart(a: readonly SitePoint[], b: readonly SitePoint[]): Apart {
  let best: Apart | undefined;
  eachPairOfLegs(a, b, (a0, a1, _beforeA, b0, b1) => {
    if (best?.distance === 0) return;
    const apart = segmentsApart(a0, a1, b0, b1);
    if (!best || apart.distance < best.distance) best = apart;
  });
  if (!best) throw new RangeError('polylinesApart: a line needs at least one point');
  return best;
}

type PairOfLegs = (
  a0: SitePoint,
  a1: SitePoint,
  beforeA: number,
  b0: SitePoint,
  b1: SitePoint,
  beforeB: number,
) => void;

/** A line of one point has one leg of no length. */
function eachPairOfLegs(a: readonly SitePoint[], b: readonly SitePoint[], visit: PairOfLegs): void {
  let beforeA = 0;
  for (let i = 0; i < Math.max(1, a.length - 1); i++) {
    const a0 = a[i];
    const a1 = a[i + 1] ?? a0;
    if (!a0 || !a1) return;
    let beforeB = 0;
    for (let j = 0; j < Math.max(1, b.length - 1); j++) {
      const b0 = b[j];
      const b1 = b[j + 1] ?? b0;
      if (!b0 || !b1) return;
      visit(a0, a1, beforeA, b0, b1, beforeB);
      beforeB += distanceBetween(b0, b1);
    }
    beforeA += distanceBetween(a0, a1);
  }
}
