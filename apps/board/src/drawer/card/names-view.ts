import { type HoleId, holeOf, type Plan, type Routing, type Verdict } from '@loopwright/model';
import { namesOf } from '../../reading/names.ts';

/** What the designer calls and thinks of one hole. */
export interface NamesRow {
  readonly hole: HoleId;
  readonly number: string;
  readonly name: string;
  readonly verdict: Verdict;
  readonly reason: string;
}

/** Names and verdicts of all holes in the round, in playing order, spare ones last. */
export function toNamesRows(plan: Plan, routing: Routing): readonly NamesRow[] {
  const names = namesOf(plan, routing, 'metres');
  const order = [...routing.loops.flatMap(({ holes }) => holes), ...routing.spare];
  return order.flatMap((id) => {
    const hole = holeOf(routing, id);
    if (!hole) return [];
    const spare = routing.spare.indexOf(id);
    const number = spare < 0 ? names.number(id) : `S${spare + 1}`;
    const { name = '', verdict, verdictReason: reason = '' } = hole;
    return [{ hole: id, number, name, verdict, reason }];
  });
}
