import type { DoneStep, PlanDocument, Stop } from '@loopwright/document';
import type { Plan } from '@loopwright/model';
import { openSlot, type Watched } from './slot.ts';

/** What is written in the document, as views ask for it. */
export interface Written {
  /** Without anybody's drag. */
  readonly plan: Watched<Plan>;
  readonly steps: Watched<ReturnType<PlanDocument['steps']>>;
  readonly done: Watched<readonly DoneStep[]>;
  /** Counts the changes, mine and others'. */
  readonly revision: Watched<number>;
  readonly stop: Stop;
}

/** Follows the document. */
export function followDocument(document: Pick<PlanDocument, 'read' | 'steps' | 'done' | 'onChange'>): Written {
  const plan = openSlot(document.read());
  const steps = openSlot(document.steps());
  const done = openSlot(document.done());
  const revision = openSlot(0);
  const stop = document.onChange(() => {
    plan.set(document.read());
    steps.set(document.steps());
    done.set(document.done());
    revision.set(revision.get() + 1);
  });
  return { plan, steps, done, revision, stop };
}
