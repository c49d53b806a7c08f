import type {
  Connection,
  EditResult,
  NamedEdit,
  Person,
  PlanDocument,
  PresenceState,
  SavedState,
  Stop,
  UndoResult,
} from '@loopwright/document';
import type { Plan, RoutingId, SitePoint } from '@loopwright/model';
import type { Selection } from '../board/parts.ts';
import { dragsOf, type Frame, type LiveDrag } from './frame.ts';
import { type Landing, openReckoner, type ReckonerParts } from './reckoner.ts';
import { sameDrags, sameRoster } from './roster.ts';
import { openSlot, type Watched } from './slot.ts';

/** What came of the last thing this person did, where it is worth a word. */
export type Notice =
  | { readonly kind: 'gone'; readonly edit: NamedEdit }
  | { readonly kind: 'stepped'; readonly result: UndoResult }
  | { readonly kind: 'locked' };

export interface SessionParts extends ReckonerParts {
  readonly plan: PlanDocument;
  readonly connection: Pick<Connection, 'presence' | 'saved' | 'onSaved'>;
  /** Does the work once, before the next picture is shown. */
  readonly beforeNextPicture: (work: () => void) => Stop;
}

/** One board on one page: document, presence and analysis joined. Views subscribe to the slot they show. */
export interface BoardSession {
  /** `undefined` until the plan has a routing. */
  readonly frame: Watched<Frame | undefined>;
  /** Everybody else with pointer and drag, as often as they move. */
  readonly people: Watched<readonly Person[]>;
  /** Everybody else; changes only when somebody comes, goes, selects or starts and ends a drag. */
  readonly roster: Watched<readonly Person[]>;
  /** The plan as it is written, without anybody's drag. */
  readonly writtenPlan: Watched<Plan>;
  readonly saved: Watched<SavedState>;
  readonly steps: Watched<ReturnType<PlanDocument['steps']>>;
  readonly selection: Watched<Selection>;
  readonly notice: Watched<Notice | undefined>;
  readonly myDrag: Watched<NamedEdit | undefined>;
  edit(edit: NamedEdit): EditResult;
  /** Shows everybody what this edit would do; `undefined` puts it back without a trace. */
  drag(edit: NamedEdit | undefined): void;
  /** Writes the drag in progress: one edit, one undo step. */
  drop(): EditResult;
  undo(): void;
  redo(): void;
  point(at: SitePoint | undefined): void;
  select(selection: Selection): void;
  showRouting(routing: RoutingId): void;
  sayLocked(): void;
  dismissNotice(): void;
  close(): void;
}

/** Opens the session of a board. Nothing is computed more than once a frame. */
export function openBoardSession(parts: SessionParts): BoardSession {
  const { plan, connection, beforeNextPicture } = parts;
  const { presence } = connection;
  const reckon = openReckoner(parts);
  const frame = openSlot<Frame | undefined>(undefined);
  const people = openSlot<readonly Person[]>(presence.others());
  const roster = openSlot<readonly Person[]>(people.get());
  const saved = openSlot(connection.saved());
  const writtenPlan = openSlot(plan.read());
  const steps = openSlot(plan.steps());
  const selection = openSlot<Selection>({});
  const notice = openSlot<Notice | undefined>(undefined);
  const myDrag = openSlot<NamedEdit | undefined>(undefined);
  let pointer: SitePoint | undefined;
  let routing: RoutingId | undefined;
  let others: readonly LiveDrag[] = dragsOf(people.get());
  let landing: Landing | undefined;
  let revision = 0;
  let joined = false;
  let cancelPicture: Stop | undefined;

  const reckonNow = () => {
    cancelPicture = undefined;
    const next = reckon({ mine: myDrag.get(), others, routing, revision, landing, joined });
    joined = saved.get().kind !== 'joining';
    landing = undefined;
    frame.set(next);
  };
  const schedule = () => {
    cancelPicture ??= beforeNextPicture(reckonNow);
  };
  const say = () => {
    const shown = frame.get()?.routing.id ?? routing;
    const { hole } = selection.get();
    const drag = myDrag.get();
    const state: PresenceState = {
      selection: hole === undefined ? [] : [hole],
      ...(pointer ? { pointer } : {}),
      ...(shown === undefined ? {} : { routing: shown }),
      ...(drag ? { drag } : {}),
    };
    presence.say(state);
  };
  /** What the page shows without my drag: what a change of mine is compared with. */
  const landingOf = (edits: readonly NamedEdit[]): Landing | undefined => {
    const shown = frame.get();
    if (!shown) return undefined;
    const { change } = shown;
    const mineInProgress = change && change.state === 'in progress' && !change.by && myDrag.get() !== undefined;
    return mineInProgress
      ? { edits, before: change.before, beforePlan: change.beforePlan }
      : { edits, before: shown.analysis, beforePlan: shown.plan };
  };
  const edit = (named: NamedEdit): EditResult => {
    const before = landingOf([named]);
    const result = plan.edit(named);
    if (result === 'done') landing = before;
    notice.set(result === 'gone' ? { kind: 'gone', edit: named } : undefined);
    schedule();
    return result;
  };
  const step = (take: () => UndoResult) => {
    if (myDrag.get()) drag(undefined);
    const before = landingOf([]);
    const result = take();
    if (result.kind !== 'nothing' && before) {
      landing = { ...before, edits: [result.step], ...(result.kind === 'undone' ? { takenBack: true } : {}) };
    }
    notice.set({ kind: 'stepped', result });
    schedule();
  };
  const drag = (named: NamedEdit | undefined) => {
    myDrag.set(named);
    say();
    schedule();
  };

  const stops = [
    plan.onChange(() => {
      revision += 1;
      steps.set(plan.steps());
      writtenPlan.set(plan.read());
      schedule();
    }),
    presence.onChange(() => {
      const now = presence.others();
      people.set(now);
      if (!sameRoster(roster.get(), now)) roster.set(now);
      const drags = dragsOf(now);
      if (sameDrags(others, drags)) return;
      others = drags;
      schedule();
    }),
    connection.onSaved(() => saved.set(connection.saved())),
  ];
  reckonNow();

  return {
    frame,
    people,
    roster,
    writtenPlan,
    saved,
    steps,
    selection,
    notice,
    myDrag,
    edit,
    drag,
    drop: () => {
      const held = myDrag.get();
      if (!held) return 'nothing';
      const result = edit(held);
      drag(undefined);
      return result;
    },
    undo: () => step(plan.undo),
    redo: () => step(plan.redo),
    point: (at) => {
      pointer = at;
      say();
    },
    select: (next) => {
      selection.set(next);
      say();
    },
    showRouting: (id) => {
      routing = id;
      say();
      schedule();
    },
    sayLocked: () => notice.set({ kind: 'locked' }),
    dismissNotice: () => notice.set(undefined),
    close: () => {
      for (const stop of stops) stop();
      cancelPicture?.();
    },
  };
}
