import type { RoutingId } from './ids.ts';

/** Names a finding for as long as it is about the same things: its code and the ids of holes and features, joined by '|'. */
export type FindingKey = string;

/**
 * What was decided about a finding. Where somebody can be hurt, only the first three are offered:
 * nothing here reads as accepting a danger.
 */
export type DispositionKind = 'to be checked by' | 'checked on site by' | 'mitigated by' | 'kept on purpose, because';

export interface Disposition {
  readonly routing: RoutingId;
  readonly finding: FindingKey;
  readonly kind: DispositionKind;
  /** Who, how or why: completes the sentence that `kind` begins. */
  readonly words: string;
  /** The measured value when it was decided; the disposition reopens when it worsens by more than 3 m and 5 %. */
  readonly measured: number;
}
