import type {
  Connection,
  DoneStep,
  EditResult,
  NamedEdit,
  Person,
  PlanDocument,
  SavedState,
} from '@loopwright/document';
import type { Plan, RoutingId, SitePoint } from '@loopwright/model';
import type { Selection } from '../board/parts.ts';
import { followDocument } from './follow-document.ts';
import type { Frame } from './frame.ts';
import { goneMeanwhile } from './gone-meanwhile.ts';
import { landingFrom } from './landing.ts';
import type { Notice } from './notice.ts';
import { followOthers } from './others.ts';
import type { PictureClock } from './picture-clock.ts';
import { openPictures } from './pictures.ts';
import type { ReckonerParts } from './reckoner.ts';
import { openRoutingChoice } from './routing-choice.ts';
import { openSlot, type Watched } from './slot.ts';
import { openStepping } from './stepping.ts';
import { openVoice } from './voice.ts';

export interface SessionParts extends ReckonerParts {
  readonly plan: PlanDocument;
  readonly connection: Pick<Connection, 'presence' | 'saved' | 'onSaved'>;
  readonly clock: PictureClock;
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
  /** My steps that still stand, oldest first. */
  readonly done: Watched<readonly DoneStep[]>;
  readonly selection: Watched<Selection>;
  readonly notice: Watched<Notice | undefined>;
  edit(edit: NamedEdit): EditResult;
  /** Shows everybody what this edit would do; `undefined` puts it back without a trace. */
  drag(edit: NamedEdit | undefined): void;
  /** Writes the drag in progress: one edit, one undo step. */
  drop(): EditResult;
  undo(): void;
  redo(): void;
  /** Puts back that step of mine and all after it, as one step that undo brings again. */
  putBack(from: number): void;
  point(at: SitePoint | undefined): void;
  select(selection: Selection): void;
  showRouting(routing: RoutingId): void;
  /** Shows the routing that was shown before this one, and this one again the next time. */
  flipRouting(): void;
  sayLocked(): void;
  /** Says something at the foot of the drawing, and to those who listen. */
  say(words: string): void;
  dismissNotice(): void;
  close(): void;
}

/** Opens the session of a board. Nothing is computed more than once a frame. */
export function openBoardSession(parts: SessionParts): BoardSession {
  const { plan, connection } = parts;
  const others = followOthers(connection.presence);
  const written = followDocument(plan);
  const tell = openVoice(connection.presence);
  const saved = openSlot(connection.saved());
  const selection = openSlot<Selection>({});
  const notice = openSlot<Notice | undefined>(undefined);
  const pictures = openPictures(parts, { others, written, saved });

  const drag = (named: NamedEdit | undefined) => {
    // The pointer may still be down on something that somebody has removed: it drags nothing any more.
    const held = named && goneMeanwhile(named, written.plan.get()) ? undefined : named;
    pictures.hold(held);
    tell({ drag: held });
  };
  const stopGone = written.plan.onChange(() => {
    const held = pictures.held();
    const gone = held && goneMeanwhile(held, written.plan.get());
    if (!gone) return;
    const before = pictures.frame.get()?.plan ?? written.plan.get();
    drag(undefined);
    notice.set({ kind: 'said', words: gone(before, others.roster.get()) });
  });
  const edit = (named: NamedEdit): EditResult => {
    const before = landingFrom(pictures.frame.get());
    const result = plan.edit(named);
    if (result === 'done' && before) pictures.land({ ...before, edits: [named] });
    notice.set(result === 'gone' ? { kind: 'gone', edit: named } : undefined);
    return result;
  };
  const steps = openStepping({ plan, pictures, notice, drag });
  const say = (words: string) => notice.set({ kind: 'said', words });
  const shown = () => pictures.frame.get()?.routing.id;
  const show = (routing: RoutingId) => {
    pictures.show(routing);
    tell({ routing });
  };
  const stopSaved = connection.onSaved(() => saved.set(connection.saved()));
  tell({ routing: shown() });

  return {
    frame: pictures.frame,
    people: others.people,
    roster: others.roster,
    writtenPlan: written.plan,
    steps: written.steps,
    done: written.done,
    saved,
    selection,
    notice,
    edit,
    drag,
    drop: () => {
      const held = pictures.held();
      if (!held) return 'nothing';
      const result = edit(held);
      drag(undefined);
      return result;
    },
    ...steps,
    ...openRoutingChoice({ plan, shown, show, say }),
    point: (pointer) => tell({ pointer, routing: shown() }),
    select: (next) => {
      selection.set(next);
      tell({ selection: next });
    },
    sayLocked: () => notice.set({ kind: 'locked' }),
    say,
    dismissNotice: () => notice.set(undefined),
    close: () => {
      for (const stop of [stopGone, written.stop, stopSaved, pictures.stop]) stop();
    },
  };
}
