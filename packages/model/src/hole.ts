import type { HoleId, LoopId, PartId, TeeSetId, TurnPointId } from './ids.ts';
import type { Ring, SitePoint } from './space.ts';

/** Where a hole sits: in the order of a loop, beside the round as a spare, or taken off the plan (never deleted). */
export type Seat =
  | { readonly in: 'loop'; readonly loop: LoopId; readonly key: string }
  | { readonly in: 'spare'; readonly key: string }
  | { readonly in: 'removed'; readonly key: string };

/** A point where the line of play turns, drawn by the designer. */
export interface TurnPoint {
  readonly id: TurnPointId;
  readonly at: SitePoint;
}

/** The putting surface: an oval about its centre, or an outline of its own. */
export interface Green {
  readonly centre: SitePoint;
  /** Along `bearing`, in metres. */
  readonly length: number;
  /** Across `bearing`, in metres. */
  readonly width: number;
  /** Of the long axis, radians clockwise from north (+y). */
  readonly bearing: number;
  /** Relative to the centre, so that a moved green keeps its shape. */
  readonly outline?: Ring;
}

/** Intended strokes, set by the designer or following from the length. */
export type ParChoice = 3 | 4 | 5 | 6 | 'by length';

export type Verdict = 'keeper' | 'sound' | 'weak' | 'undecided';

/** Half-widths of the corridor in metres, where the designer departs from the board's settings. */
export interface CorridorWidths {
  readonly tee?: number;
  readonly landing?: number;
  readonly green?: number;
  readonly behind?: number;
}

export type RelationKind = 'shares its green with' | 'crosses on purpose' | 'shares fairway with';

/** Something the designer means, so that it is shown as meant and not counted against the hole. */
export interface Relation {
  readonly kind: RelationKind;
  readonly hole: HoleId;
}

export interface Hole {
  readonly id: HoleId;
  readonly name?: string;
  readonly note?: string;
  readonly seat: Seat;
  /** Only the tees that were placed by hand; others are proposed by the analysis. */
  readonly tees: Readonly<Record<TeeSetId, SitePoint>>;
  /** In order of play, at most three. */
  readonly turnPoints: readonly TurnPoint[];
  /** Absent on an incomplete hole. */
  readonly green?: Green;
  readonly par: { readonly men: ParChoice; readonly women: ParChoice };
  readonly verdict: Verdict;
  readonly verdictReason?: string;
  readonly pinned: readonly PartId[];
  readonly corridor?: CorridorWidths;
  /** The walk from this hole's green to the next tee goes by these. */
  readonly waypoints: readonly SitePoint[];
  readonly relations: readonly Relation[];
}
