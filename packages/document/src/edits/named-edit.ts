import type {
  Disposition,
  FindingKey,
  HoleId,
  LoopId,
  ParChoice,
  PartId,
  Plan,
  Relation,
  RoutingId,
  SettingKey,
  SitePoint,
  Verdict,
} from '@loopwright/model';

interface OfHole {
  readonly routing: RoutingId;
  readonly hole: HoleId;
}

/** A place in a loop: after that hole, or first. Naming a neighbour, not an index, keeps its sense when others renumber. */
interface PlaceInLoop {
  readonly loop: LoopId;
  readonly after: HoleId | 'first';
}

/**
 * Everything people do to a plan, by name. Plain JSON: the same value is kept as one undo step,
 * and sent by presence while a drag is in progress.
 */
export type NamedEdit =
  | (OfHole & { readonly edit: 'move part'; readonly part: PartId; readonly to: SitePoint })
  | (OfHole & { readonly edit: 'move hole'; readonly by: SitePoint })
  | (OfHole & { readonly edit: 'reverse hole' })
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
  | { readonly edit: 'change setting'; readonly setting: SettingKey; readonly value: number | 'default' }
  | { readonly edit: 'decide'; readonly disposition: Disposition }
  | { readonly edit: 'reopen'; readonly routing: RoutingId; readonly finding: FindingKey }
  /** Fills an empty document, e.g. from an imported course. Never applied over holes. */
  | { readonly edit: 'lay out plan'; readonly plan: Plan };

/** `gone`: what it speaks of was removed by someone meanwhile. `nothing`: it would change nothing, so nothing is written. */
export type EditResult = 'done' | 'gone' | 'nothing';
