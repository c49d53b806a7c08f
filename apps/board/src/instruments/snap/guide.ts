import { distanceBetween, dot, minus, plus, scaled, turnedLeft } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';

/** Something a point is pulled to: a place, or a line of places. */
export interface Guide {
  readonly kind: 'place' | 'line';
  /** Why a point lies on it: 'square to the leg before'. */
  readonly because: string;
  /** The stronger one pulls when several are within reach. */
  readonly strength: number;
  /** Its share of the reach: what is meant more often is met from further away. */
  readonly reach: number;
  /** Its place nearest to a point; `undefined` where it has none, e.g. behind the start of a ray. */
  nearest(p: SitePoint): SitePoint | undefined;
  /** What is drawn of it for a point that lies on it. */
  shown(at: SitePoint): readonly SitePoint[];
}

type Look = Pick<Guide, 'because' | 'strength' | 'reach'>;

/** A single place, e.g. a green site found before. */
export function placeGuide(place: SitePoint, look: Look): Guide {
  return { kind: 'place', ...look, nearest: () => place, shown: () => [] };
}

/** All places so far from a centre. */
export function ringGuide(centre: SitePoint, radius: number, look: Look): Guide {
  return {
    kind: 'line',
    ...look,
    nearest: (p) => {
      const distance = distanceBetween(centre, p);
      return distance > 0 ? plus(centre, scaled(minus(p, centre), radius / distance)) : undefined;
    },
    shown: (at) => arcAbout(centre, at),
  };
}

/** A line from a point in a direction of length 1: one way only (`ray`), or both. */
export function lineGuide(from: SitePoint, towards: SitePoint, ways: 'ray' | 'both ways', look: Look): Guide {
  return {
    kind: 'line',
    ...look,
    nearest: (p) => {
      const along = dot(minus(p, from), towards);
      return ways === 'ray' && along <= 0 ? undefined : plus(from, scaled(towards, along));
    },
    shown: (at) => [from, plus(at, scaled(minus(at, from), BEYOND))],
  };
}

/**
 * All places so far from something, on the side the point is on.
 *
 * @param closest  the nearest place of that thing; `undefined` where the guide does not hold, e.g. inside it
 */
export function offsetGuide(closest: (p: SitePoint) => SitePoint | undefined, distance: number, look: Look): Guide {
  return {
    kind: 'line',
    ...look,
    nearest: (p) => {
      const edge = closest(p);
      if (!edge || distance === 0) return edge;
      const now = distanceBetween(edge, p);
      return now > 0 ? plus(edge, scaled(minus(p, edge), distance / now)) : undefined;
    },
    shown: (at) => {
      const edge = closest(at);
      return edge && distance > 0 ? [edge, at] : [];
    },
  };
}

/** A guide line is drawn this share of its length beyond the point that lies on it. */
const BEYOND = 0.15;
/** Half the angle of the arc that is drawn of a ring, as steps to each side and the tangent of one of them. */
const STEPS = 6;
const STEP = 0.06;

/** The part of a ring about a point on it. */
function arcAbout(centre: SitePoint, at: SitePoint): readonly SitePoint[] {
  const out = minus(at, centre);
  const aside = turnedLeft(out);
  return Array.from({ length: 2 * STEPS + 1 }, (_, index) => {
    const t = (index - STEPS) * STEP;
    // The half-angle form of sine and cosine: on the ring exactly, without either.
    const [across, along] = [(2 * t) / (1 + t * t), (1 - t * t) / (1 + t * t)];
    return plus(centre, plus(scaled(out, along), scaled(aside, across)));
  });
}
