import type { Analysis } from '@loopwright/analysis';
import type { PartId, Plan, Routing } from '@loopwright/model';
import type { Names } from '../reading/names.ts';

/** What the menu of holes is made from. */
export interface MenuSource {
  readonly plan: Plan;
  readonly routing: Routing;
  readonly analysis: Analysis;
  readonly names: Names;
  readonly freshId: (letter: string) => string;
  /** The part that was under the pointer, or is picked out. */
  readonly part?: PartId;
}
