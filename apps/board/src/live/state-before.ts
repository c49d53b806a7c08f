import type { Analysis } from '@loopwright/analysis';
import type { NamedEdit, PlanDocument } from '@loopwright/document';
import type { Plan, RoutingId } from '@loopwright/model';

/** The frame analysis with its memory, as `openAnalysis()` makes it. */
export interface Analyser {
  analyse(plan: Plan, routing: RoutingId): Analysis;
}

/** A plan and what follows from it. */
export interface State {
  readonly plan: Plan;
  readonly analysis: Analysis;
}

type StateBefore = (edits: readonly NamedEdit[], revision: number, routing: RoutingId) => State;

/** Everybody's present state without the drag in focus, worked out again only when something else than it moved. */
export function openStateBefore(plan: Pick<PlanDocument, 'readWith'>, analyser: Analyser): StateBefore {
  let kept: (State & { readonly revision: number; readonly edits: readonly NamedEdit[] }) | undefined;
  return (edits, revision, routing) => {
    const same = kept?.revision === revision && kept.analysis.routing === routing && sameEdits(kept.edits, edits);
    if (kept && same) return kept;
    const before = plan.readWith(edits);
    kept = { plan: before, analysis: analyser.analyse(before, routing), revision, edits };
    return kept;
  };
}

function sameEdits(one: readonly NamedEdit[], other: readonly NamedEdit[]): boolean {
  return one.length === other.length && one.every((edit, index) => edit === other[index]);
}
