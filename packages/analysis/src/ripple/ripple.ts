import type { FindingKey, HoleId, LoopId, RoundId } from '@loopwright/model';
import type { Finding } from '../figures.ts';

/** A figure that differs between two states. `better` is absent where neither way is good by itself (a length, a par). */
export interface FigureChange {
  readonly of:
    | { readonly kind: 'hole'; readonly hole: HoleId }
    | { readonly kind: 'walk'; readonly key: string; readonly from?: HoleId; readonly to?: HoleId }
    | { readonly kind: 'loop'; readonly loop: LoopId }
    | { readonly kind: 'round'; readonly round: RoundId };
  readonly figure: 'length' | 'par' | 'approach' | 'bearing' | 'walk' | 'walk-back' | 'on foot' | 'number';
  readonly before: number;
  readonly after: number;
  readonly better?: boolean;
}

/**
 * How a finding changed. `gained` is new or more severe; `inside its limit again` is gone;
 * `eased` and `worsened` moved without leaving.
 */
export interface FindingChange {
  readonly change: 'gained' | 'inside its limit again' | 'eased' | 'worsened';
  readonly key: FindingKey;
  readonly before?: Finding;
  readonly after?: Finding;
}

/** What a change did: every figure and finding that differs between two states of one routing. */
export interface Ripple {
  readonly figures: readonly FigureChange[];
  readonly findings: readonly FindingChange[];
  /** For the pointer while dragging; absent when there is none. */
  readonly worstGain?: FindingChange | FigureChange;
  readonly worstLoss?: FindingChange | FigureChange;
}
