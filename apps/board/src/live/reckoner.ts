import type { Analysis, Ripple } from '@loopwright/analysis';
import type { NamedEdit, Person, PlanDocument } from '@loopwright/document';
import type { RoutingId } from '@loopwright/model';
import type { Change } from '../board/parts.ts';
import { openFocus } from './focus.ts';
import { differs, type Frame, type LiveDrag, routingShown } from './frame.ts';
import type { Landing } from './landing.ts';
import { type Analyser, openStateBefore, type State } from './state-before.ts';

/** Compares two states; `shown` is what stands on the page, so that a trembling pointer does not make it flicker. */
export type CompareStates = (before: Analysis, after: Analysis, shown: Ripple | undefined) => Ripple;

export interface ReckonerParts {
  readonly plan: Pick<PlanDocument, 'readWith'>;
  readonly openAnalysis: () => Analyser;
  readonly compare: CompareStates;
}

/** What a frame is made of besides the document. */
export interface Hands {
  readonly mine: NamedEdit | undefined;
  readonly others: readonly LiveDrag[];
  /** Everybody else at the board. */
  readonly company: readonly Pick<Person, 'name' | 'ink'>[];
  readonly routing: RoutingId | undefined;
  /** Counts the document's changes: whether it is another one than at the frame before. */
  readonly revision: number;
  readonly landing: Landing | undefined;
  /** False while the plan is still coming in: what arrives then is no change. */
  readonly joined: boolean;
}

/** Whose change it was when no drag told and it may have been any of several. */
const SOMEBODY = { name: 'Somebody else', ink: 7 };

/** Who made a change that no drag told of: the only other one here, else nobody knows. */
function makerAmong([first, ...more]: Hands['company']): NonNullable<Change['by']> {
  return first && more.length === 0 ? { name: first.name, ink: first.ink } : SOMEBODY;
}

/**
 * Makes frames: everybody's hands laid over the plan, what follows, and what the drag in focus does to it.
 *
 * Before is everybody's present state without that drag, after is with it. The state before is kept while only the
 * drag in focus moves, so that a frame costs one reading and one analysis.
 */
export function openReckoner(parts: ReckonerParts): (hands: Hands) => Frame | undefined {
  // One memory serves both sides, so that a hole nobody moved is the same object before and after.
  const analyser = parts.openAnalysis();
  const changes = openChanges(parts, analyser);
  return (hands) => {
    const edits = hands.others.map(({ edit }) => edit);
    const drags = hands.mine ? [...edits, hands.mine] : edits;
    const plan = parts.plan.readWith(drags);
    const routing = routingShown(plan, hands.routing);
    if (!routing) return undefined;
    const analysis = analyser.analyse(plan, routing.id);
    const change = changes(hands, { plan, analysis });
    return { plan, routing, analysis, drags, mineInHand: hands.mine !== undefined, ...(change ? { change } : {}) };
  };
}

/** Follows what the drag in focus does, and keeps what the last change did until the next. */
function openChanges({ plan, compare }: ReckonerParts, analyser: Analyser) {
  const focus = openFocus();
  const stateBefore = openStateBefore(plan, analyser);
  let live: Change | undefined;
  let done: Change | undefined;
  let last: (State & { readonly revision: number }) | undefined;

  const inProgress = (drag: LiveDrag, hands: Hands, after: State): Change | undefined => {
    const rest = hands.others.filter((other) => other !== drag).map(({ edit }) => edit);
    const before = stateBefore(rest, hands.revision, after.analysis.routing);
    if (!differs(before.plan, after.plan, drag.edit, after.analysis.routing)) return undefined;
    const by = drag.by === 'me' ? undefined : { name: drag.by.name, ink: drag.by.ink };
    const shown = live?.by?.name === by?.name ? live?.ripple : undefined;
    return {
      state: 'in progress',
      ...(by ? { by } : {}),
      edits: [drag.edit],
      before: before.analysis,
      after: after.analysis,
      beforePlan: before.plan,
      ripple: compare(before.analysis, after.analysis, shown),
    };
  };
  const landed = ({ edits, takenBack, by, before, beforePlan }: Landing, after: Analysis): Change => ({
    state: 'done',
    edits,
    ...(takenBack ? { takenBack } : {}),
    ...(by ? { by } : {}),
    before,
    beforePlan,
    after,
    ripple: compare(before, after, undefined),
  });
  /** Something was written that is not mine: the drag that was shown, or a step of somebody's. */
  const writtenByOthers = (hands: Hands, after: Analysis): Change | undefined => {
    if (!last || last.revision === hands.revision || !hands.joined) return undefined;
    if (live) return live.by && live.before.routing === after.routing ? landed(live, after) : undefined;
    if (last.analysis.routing !== after.routing) return undefined;
    const change = landed(
      { edits: [], by: makerAmong(hands.company), before: last.analysis, beforePlan: last.plan },
      after,
    );
    return change.ripple.figures.length + change.ripple.findings.length > 0 ? change : undefined;
  };

  return (hands: Hands, after: State): Change | undefined => {
    const { routing } = after.analysis;
    if (done && done.after.routing !== routing) done = undefined;
    const drag = focus.choose(hands.mine, hands.others, live?.by);
    const next = drag && inProgress(drag, hands, after);
    if (hands.landing?.before.routing === routing) {
      done = landed(hands.landing, after.analysis);
      focus.passOver(hands.others);
      live = undefined;
    } else {
      if (!next) done = writtenByOthers(hands, after.analysis) ?? done;
      live = next;
    }
    last = { ...after, revision: hands.revision };
    return live ?? done;
  };
}
