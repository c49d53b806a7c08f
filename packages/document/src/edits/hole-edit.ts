import type {
  CorridorWidths,
  Green,
  GreenShape,
  HoleId,
  LoopId,
  ParChoice,
  PartId,
  Relation,
  RoutingId,
  SitePoint,
  TeeSetId,
  TurnPoint,
  TurnPointId,
  Verdict,
} from '@loopwright/model';

export interface OfHole {
  readonly routing: RoutingId;
  readonly hole: HoleId;
}

/** A place in a loop: after that hole, or first. Naming a neighbour, not an index, keeps its sense when others renumber. */
export interface PlaceInLoop {
  readonly loop: LoopId;
  readonly after: HoleId | 'first';
}

/** What people do to a hole. */
export type HoleEdit =
  /** A new hole. While it is drawn it may lack its green or its tee. */
  | (OfHole & {
      readonly edit: 'draw hole';
      readonly seat: PlaceInLoop | 'spare';
      readonly tees: Readonly<Record<TeeSetId, SitePoint>>;
      readonly turnPoints: readonly TurnPoint[];
      readonly green?: Green;
    })
  /** A copy of it in the spare tray, `by` beside it. */
  | (OfHole & { readonly edit: 'copy hole'; readonly as: HoleId; readonly by: SitePoint })
  /** Off the plan; undo brings it back. */
  | (OfHole & { readonly edit: 'remove hole' })
  | (OfHole & { readonly edit: 'move part'; readonly part: PartId; readonly to: SitePoint })
  | (OfHole & { readonly edit: 'move hole'; readonly by: SitePoint })
  | {
      readonly edit: 'move holes';
      readonly routing: RoutingId;
      readonly holes: readonly HoleId[];
      readonly by: SitePoint;
    }
  /** `place`: how many turn points come before it in play. `nothing` on a hole that has as many as it can. */
  | (OfHole & {
      readonly edit: 'add turn point';
      readonly turn: TurnPointId;
      readonly at: SitePoint;
      readonly place: number;
    })
  | (OfHole & { readonly edit: 'remove turn point'; readonly turn: TurnPointId })
  /** The tee back along its line, or the green on along its own, so many metres; negative shortens. */
  | (OfHole & { readonly edit: 'lengthen'; readonly end: 'green' | `tee:${string}`; readonly by: number })
  | (OfHole & { readonly edit: 'shape green'; readonly shape: GreenShape })
  /** Takes the placed tee away: it is proposed again. */
  | (OfHole & { readonly edit: 'propose tee'; readonly teeSet: TeeSetId })
  /** Points of the way to the next tee. */
  | (OfHole & { readonly edit: 'set waypoints'; readonly waypoints: readonly SitePoint[] })
  | (OfHole & { readonly edit: 'set corridor'; readonly corridor: CorridorWidths | null })
  | (OfHole & { readonly edit: 'reverse hole' })
  /** Each plays where the other did: places on the ground change hands, numbers and names stay. */
  | (OfHole & { readonly edit: 'exchange corridors'; readonly with: HoleId })
  | (OfHole & PlaceInLoop & { readonly edit: 'move in the round' })
  | (OfHole & { readonly edit: 'take out' })
  | (OfHole & PlaceInLoop & { readonly edit: 'bring back' })
  | (OfHole & { readonly edit: 'swap places'; readonly with: HoleId })
  | (OfHole & { readonly edit: 'set par'; readonly sex: 'men' | 'women'; readonly par: ParChoice })
  | (OfHole & { readonly edit: 'judge'; readonly verdict: Verdict; readonly reason: string })
  | (OfHole & { readonly edit: 'pin'; readonly part: PartId })
  | (OfHole & { readonly edit: 'unpin'; readonly part: PartId })
  | (OfHole & { readonly edit: 'relate'; readonly relation: Relation })
  | (OfHole & { readonly edit: 'unrelate'; readonly relation: Relation })
  | (OfHole & { readonly edit: 'name hole'; readonly name: string })
  | (OfHole & { readonly edit: 'note hole'; readonly note: string });
