import { distanceBetween } from '@loopwright/geometry';
import { pointToMillimetre, type SitePoint } from '@loopwright/model';
import type { Snapped } from '../instrument.ts';
import type { Guide } from './guide.ts';

/**
 * A point pulled to the strongest guide within reach: to a place before any line, and to where two lines meet when that
 * is within reach too. As it is when no guide is.
 *
 * @param reach  metres on the ground
 */
export function pulled(at: SitePoint, guides: readonly Guide[], reach: number): Snapped {
  const near = guides
    .flatMap((guide): Near[] => {
      const place = guide.nearest(at);
      const distance = place ? distanceBetween(at, place) : Number.POSITIVE_INFINITY;
      return place && distance <= reach * guide.reach ? [{ guide, place, distance }] : [];
    })
    .sort(strongestFirst);
  const best = near.find(({ guide }) => guide.kind === 'place') ?? near[0];
  if (!best) return { at };
  if (best.guide.kind === 'place') return snapped(best.place, best.guide.because, []);
  for (const other of near) {
    const both = other === best ? undefined : meeting(best, other, at, reach);
    if (both) return snapped(both, `${best.guide.because}, ${other.guide.because}`, best.guide.shown(both));
  }
  return snapped(best.place, best.guide.because, best.guide.shown(best.place));
}

interface Near {
  readonly guide: Guide;
  readonly place: SitePoint;
  readonly distance: number;
}

const strongestFirst = (a: Near, b: Near) => b.guide.strength - a.guide.strength || a.distance - b.distance;

function snapped(place: SitePoint, because: string, guide: readonly SitePoint[]): Snapped {
  return { at: pointToMillimetre(place), because, ...(guide.length > 1 ? { guide } : {}) };
}

/** Turns taken to find where two lines meet. */
const TURNS = 60;
/** Metres: nearer than the pointer can tell and the plan keeps. */
const MET = 0.0005;

/**
 * Where two guides meet near a point: the nearest place of one, of the other, and so on, until both are the same.
 * Lines that hardly meet, e.g. two rings side by side, take too many turns and are not said to.
 */
function meeting(one: Near, other: Near, at: SitePoint, reach: number): SitePoint | undefined {
  let place = one.place;
  for (let turn = 0; turn < TURNS; turn++) {
    const there = other.guide.nearest(place);
    const back = there && one.guide.nearest(there);
    if (!back) return undefined;
    if (distanceBetween(there, back) < MET)
      return distanceBetween(back, at) <= reach * MEETING_REACH ? back : undefined;
    place = back;
  }
  return undefined;
}

/** A meeting of two lines may be a little further off than either. */
const MEETING_REACH = 1.5;
