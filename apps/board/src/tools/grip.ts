import type { HoleId, SitePoint } from '@loopwright/model';

/** Something to take hold of on the hole picked out, besides its parts. */
export type Grip =
  /** In the middle of a leg: puts a turn point in, after so many others. */
  | { readonly kind: 'leg'; readonly at: SitePoint; readonly place: number }
  /** Beyond a tee or the green: slides along the line only. `out` points away from the hole, of length 1. */
  | {
      readonly kind: 'beyond';
      readonly at: SitePoint;
      readonly end: 'green' | `tee:${string}`;
      readonly out: SitePoint;
    }
  /** On the edge of the green. `out` points away from its centre, of length 1. */
  | { readonly kind: 'green length' | 'green width'; readonly at: SitePoint; readonly out: SitePoint }
  /** Outside the green: turns it about its centre. */
  | { readonly kind: 'green bearing'; readonly at: SitePoint }
  /** A point of the walk to the next tee. */
  | { readonly kind: 'waypoint'; readonly at: SitePoint; readonly index: number }
  /** In the middle of a stretch of that walk: puts a point in before so many others. */
  | { readonly kind: 'walk leg'; readonly at: SitePoint; readonly index: number };

/** The grips of one hole. */
export interface GripsOf {
  readonly hole: HoleId;
  readonly grips: readonly Grip[];
}
