import type { HoleId, PartId, RoutingId, SketchId } from './ids.ts';
import type { Ring, SitePoint } from './space.ts';

/** What is drawn beside the plan: it takes part in no figure and no finding. */
export type SketchShape =
  /** A freehand pencil line. */
  | { readonly kind: 'stroke'; readonly points: readonly SitePoint[] }
  | { readonly kind: 'measured line'; readonly points: readonly SitePoint[] }
  | { readonly kind: 'measured area'; readonly ring: Ring }
  /** A clearance ring of `radius` metres: about a part of a hole, which it follows, or about a place. */
  | { readonly kind: 'ring'; readonly radius: number; readonly about: RingCentre }
  /** A rod as it was left lying: its joints, from the pinned end. */
  | { readonly kind: 'rod'; readonly points: readonly SitePoint[] };

export type RingCentre =
  | { readonly at: SitePoint }
  | { readonly routing: RoutingId; readonly hole: HoleId; readonly part: PartId };

/** Something drawn on the table for all to see: wiped with the others unless it is kept. */
export interface Sketch {
  readonly id: SketchId;
  readonly shape: SketchShape;
  /** Who drew it, as they called themselves, and their ink. */
  readonly by: string;
  readonly ink: number;
  readonly kept: boolean;
  readonly note?: string;
}
