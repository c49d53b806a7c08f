import type { NamedEdit, PlanDocument, UndoResult } from '@loopwright/document';
import { landingFrom } from './landing.ts';
import type { Notice } from './notice.ts';
import type { Pictures } from './pictures.ts';
import type { Slot } from './slot.ts';

interface SteppingParts {
  readonly plan: Pick<PlanDocument, 'undo' | 'redo' | 'done' | 'putBack'>;
  readonly pictures: Pick<Pictures, 'frame' | 'held' | 'land'>;
  readonly notice: Slot<Notice | undefined>;
  readonly drag: (edit: NamedEdit | undefined) => void;
}

/** Taking one's own steps back and doing them again, with what that changed shown and said. */
export function openStepping({ plan, pictures, notice, drag }: SteppingParts) {
  /** What the page shows without my drag, which is let go: it was meant for the plan as it was. */
  const before = () => {
    if (pictures.held()) drag(undefined);
    return landingFrom(pictures.frame.get());
  };
  const step = (take: () => UndoResult) => {
    const was = before();
    const result = take();
    if (result.kind !== 'nothing' && was) {
      pictures.land({ ...was, edits: [result.step], ...(result.kind === 'undone' ? { takenBack: true } : {}) });
    }
    notice.set({ kind: 'stepped', result });
  };
  return {
    undo: () => step(plan.undo),
    redo: () => step(plan.redo),
    putBack: (from: number) => {
      const was = before();
      const tried = plan.done().filter(({ number }) => number >= from);
      const result = plan.putBack(from);
      if (result.kind !== 'nothing' && was) {
        pictures.land({ ...was, edits: tried.map(({ edit }) => edit), takenBack: true });
      }
      notice.set({ kind: 'put back', result });
    },
  };
}
