import type { Analysis, Ripple } from '@loopwright/analysis';
import type { NamedEdit, PlanDocument } from '@loopwright/document';
import type { Plan, RoutingId } from '@loopwright/model';
import type { Change } from '../board/parts.ts';
import { differs, dragInFocus, type Frame, type LiveDrag, routingShown } from './frame.ts';

/** The frame analysis with its memory, as `openAnalysis()` makes it. */
export interface Analyser {
  analyse(plan: Plan, routing: RoutingId): Analysis;
}

/** Compares two states; `shown` is what stands on the page, so that a trembling pointer does not make it flicker. */
export type CompareStates = (before: Analysis, after: Analysis, shown: Ripple | undefined) => Ripple;

export interface ReckonerParts {
  readonly plan: Pick<PlanDocument, 'readWith'>;
  readonly openAnalysis: () => Analyser;
  readonly compare: CompareStates;
}

/** A change that has just been written, to be shown until the next one. */
export interface Landing {
  readonly edits: readonly NamedEdit[];
  readonly takenBack?: true;
  readonly by?: NonNullable<Change['by']>;
  readonly before: Analysis;
  readonly beforePlan: Plan;
}

/** What a frame is made of besides the document. */
export interface Hands {
  readonly mine: NamedEdit | undefined;
  readonly others: readonly LiveDrag[];
  readonly routing: RoutingId | undefined;
  /** Counts the document's changes: whether it is another one than at the frame before. */
  readonly revision: number;
  readonly landing: Landing | undefined;
  /** False while the plan is still coming in: what arrives then is no change. */
  readonly joined: boolean;
}

/** Whose change it was when no drag told. */
const SOMEBODY = { name: 'Others', ink: 7 };

interface State {
  readonly plan: Plan;
  readonly analysis: Analysis;
}

/**
 * Makes frames: everybody's hands laid over the plan, what follows, and what the drag in focus does to it.
 *
 * Before is everybody's present state without that drag, after is with it. The states before are kept while only the
 * drag in focus moves, so that a frame costs one reading and one analysis.
 */
export function openReckoner({ plan, openAnalysis, compare }: ReckonerParts): (hands: Hands) => Frame | undefined {
  // One memory serves both sides, so that a hole nobody moved is the same object before and after.
  const analyser = openAnalysis();
  let live: Change | undefined;
  let done: Change | undefined;
  let last: State | undefined;
  let lastRevision = -1;
  /** Those who were dragging when something landed: what landed stays until somebody picks up anew. */
  let passedOver: ReadonlySet<string> = new Set();
  let kept: (State & { readonly revision: number; readonly edits: readonly NamedEdit[] }) | undefined;

  const stateBefore = (edits: readonly NamedEdit[], revision: number, routing: RoutingId): State => {
    const same =
      kept && kept.revision === revision && kept.analysis.routing === routing && sameEdits(kept.edits, edits);
    if (kept && same) return kept;
    const beforePlan = plan.readWith(edits);
    kept = { plan: beforePlan, analysis: analyser.analyse(beforePlan, routing), revision, edits };
    return kept;
  };

  const inProgress = (focus: LiveDrag, hands: Hands, after: State): Change | undefined => {
    const rest = hands.others.filter((drag) => drag !== focus).map(({ edit }) => edit);
    const before = stateBefore(rest, hands.revision, after.analysis.routing);
    if (!differs(before.plan, after.plan, focus.edit, after.analysis.routing)) return undefined;
    const by = focus.by === 'me' ? undefined : { name: focus.by.name, ink: focus.by.ink };
    const shown = live && live.by?.name === by?.name ? live.ripple : undefined;
    return {
      state: 'in progress',
      ...(by ? { by } : {}),
      edits: [focus.edit],
      before: before.analysis,
      after: after.analysis,
      beforePlan: before.plan,
      ripple: compare(before.analysis, after.analysis, shown),
    };
  };

  const landed = (landing: Landing, after: Analysis): Change => ({
    edits: landing.edits,
    ...(landing.by ? { by: landing.by } : {}),
    ...(landing.takenBack ? { takenBack: true } : {}),
    state: 'done',
    before: landing.before,
    beforePlan: landing.beforePlan,
    after,
    ripple: compare(landing.before, after, undefined),
  });

  return (hands) => {
    const edits = hands.others.map(({ edit }) => edit);
    const drags = hands.mine ? [...edits, hands.mine] : edits;
    const planNow = plan.readWith(drags);
    const routing = routingShown(planNow, hands.routing);
    if (!routing) return undefined;
    const analysis = analyser.analyse(planNow, routing.id);
    const after = { plan: planNow, analysis };
    if (done && done.after.routing !== routing.id) done = undefined;

    const dragging = new Set(hands.others.map(({ by }) => (by === 'me' ? 'me' : String(by.client))));
    passedOver = new Set([...passedOver].filter((client) => dragging.has(client)));
    const fresh = hands.others.filter(({ by }) => by === 'me' || !passedOver.has(String(by.client)));
    const focus = dragInFocus(hands.mine, fresh, live?.by);
    const next = focus ? inProgress(focus, hands, after) : undefined;
    const written = hands.revision !== lastRevision;
    lastRevision = hands.revision;

    if (hands.landing && hands.landing.before.routing === routing.id) {
      done = landed(hands.landing, analysis);
      passedOver = dragging;
      live = undefined;
    } else {
      // Somebody else's drag is over because it was written: what it did stays on the page.
      const theirs = live?.by
        ? live
        : !live && last && { edits: [], by: SOMEBODY, before: last.analysis, beforePlan: last.plan };
      if (theirs && !next && written && hands.joined && theirs.before.routing === routing.id) {
        const change = landed(theirs, analysis);
        if (live || change.ripple.figures.length + change.ripple.findings.length > 0) done = change;
      }
      live = next;
    }
    last = after;
    const change = live ?? done;
    return {
      plan: planNow,
      routing,
      analysis,
      drags,
      mineInHand: hands.mine !== undefined,
      ...(change ? { change } : {}),
    };
  };
}

function sameEdits(one: readonly NamedEdit[], other: readonly NamedEdit[]): boolean {
  return one.length === other.length && one.every((edit, index) => edit === other[index]);
}
