import type { BaseId, HoleId, LoopId, Round, RoundId, RoutingId, SitePoint } from '@loopwright/model';

interface OfRouting {
  readonly routing: RoutingId;
}

/** A loop to be made. */
export interface NewLoop {
  readonly id: LoopId;
  readonly name: string;
  readonly base?: BaseId;
}

/** What people do to routings, their loops and rounds. */
export type RoutingEdit =
  /** A routing without holes, with its loops and rounds. */
  | (OfRouting & {
      readonly edit: 'start routing';
      readonly name: string;
      readonly loops: readonly NewLoop[];
      readonly rounds: readonly Round[];
    })
  /** Holes keep their ids, so that the two compare. The copy is not locked. */
  | (OfRouting & { readonly edit: 'copy routing'; readonly as: RoutingId; readonly name: string })
  | (OfRouting & { readonly edit: 'name routing'; readonly name: string })
  | (OfRouting & { readonly edit: 'lock routing' })
  | (OfRouting & { readonly edit: 'unlock routing' })
  /** `nothing` for the last one, and for a locked one. */
  | (OfRouting & { readonly edit: 'remove routing' })
  | (OfRouting & { readonly edit: 'add loop'; readonly loop: NewLoop; readonly after: LoopId | 'first' })
  | (OfRouting & {
      readonly edit: 'change loop';
      readonly loop: LoopId;
      readonly to: { readonly name?: string; readonly base?: BaseId | null };
    })
  /** Its holes go to the spare tray; rounds lose it. */
  | (OfRouting & { readonly edit: 'remove loop'; readonly loop: LoopId })
  /** The holes after that one become a loop of their own, which follows the first in every round. */
  | (OfRouting & { readonly edit: 'split loop'; readonly loop: LoopId; readonly after: HoleId; readonly as: NewLoop })
  /** The holes of `with` follow those of `loop`; rounds keep the first. */
  | (OfRouting & { readonly edit: 'join loops'; readonly loop: LoopId; readonly with: LoopId })
  /** Played the other way round: order and every hole turned. */
  | (OfRouting & { readonly edit: 'reverse loop'; readonly loop: LoopId })
  /** The loop with its holes again, `by` beside it. `holes` names the copies. */
  | (OfRouting & {
      readonly edit: 'copy loop';
      readonly loop: LoopId;
      readonly as: NewLoop;
      readonly holes: readonly { readonly hole: HoleId; readonly as: HoleId }[];
      readonly by: SitePoint;
    })
  | (OfRouting & { readonly edit: 'add round'; readonly round: Round; readonly after: RoundId | 'first' })
  | (OfRouting & {
      readonly edit: 'change round';
      readonly round: RoundId;
      readonly to: { readonly name?: string; readonly loops?: readonly LoopId[] };
    })
  | (OfRouting & { readonly edit: 'remove round'; readonly round: RoundId });
