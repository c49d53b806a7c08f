import type { HoleId } from '@loopwright/model';
import { type Cells, type Write, withWrites } from './cells.ts';
import type { DoneStep, PutBackResult, UndoResult } from './contract.ts';
import type { NamedEdit } from './edits/named-edit.ts';
import { openFolds } from './folds.ts';
import { back, changesOf, goneHoles, type Step } from './undo-step.ts';

/** Steps beyond this are forgotten, oldest first. */
const MOST_STEPS = 500;

/** What taking steps back, or doing one again, writes, and what is said of it. */
export interface TurnedBack<Result> {
  readonly writes: readonly Write[];
  readonly result: Result;
}

/**
 * One page's own steps. A step goes back by writing `before` to the keys that still hold `after`; keys that somebody
 * else has changed meanwhile stay theirs and are counted.
 */
export interface History {
  record(edit: NamedEdit, writes: readonly Write[], before: Cells): void;
  undo(cells: Cells): TurnedBack<UndoResult>;
  redo(cells: Cells): TurnedBack<UndoResult>;
  steps(): { readonly undo?: NamedEdit; readonly redo?: NamedEdit };
  /** The steps that undo could take back, oldest first; the same list until it changes. */
  done(): readonly DoneStep[];
  /** Takes back a step and all after it, as one step that holds them: undoing it brings them all again, one by one. */
  putBack(from: number, cells: Cells): TurnedBack<PutBackResult>;
}

const NOTHING = { writes: [], result: { kind: 'nothing' } } as const;

export function openHistory(): History {
  let done: readonly Step[] = [];
  const undone: Step[] = [];
  let next = 1;
  const folds = openFolds();

  const push = (step: Step, onto: readonly Step[]) => {
    done = [...onto, step].slice(-MOST_STEPS);
  };
  return {
    record(edit, writes, before) {
      push({ number: next++, edit, changes: changesOf(writes, before) }, done);
      undone.length = 0;
    },
    undo(cells) {
      const step = done.at(-1);
      if (!step) return NOTHING;
      const { kept, turnedBack } = turned('undone', step, cells);
      done = folds.without(done);
      undone.push(folds.carry(step, kept));
      return turnedBack;
    },
    redo(cells) {
      const step = undone.pop();
      if (!step) return NOTHING;
      const { kept, turnedBack } = turned('redone', step, cells);
      push(folds.carry(step, kept), folds.beneath(step, done));
      return turnedBack;
    },
    steps() {
      const undo = done.at(-1)?.edit;
      const redo = undone.at(-1)?.edit;
      return { ...(undo && { undo }), ...(redo && { redo }) };
    },
    done: () => done,
    putBack(from, cells) {
      const at = done.findIndex(({ number }) => number === from);
      if (at < 0) return NOTHING;
      const put = done.slice(at);
      const { writes, overtaken } = allBack(folds.asDone(put), cells);
      const edit = { edit: 'put back what was tried', steps: put.length } as const;
      const step: Step = { number: next++, edit, changes: changesOf(writes, cells) };
      folds.fold(step, done, put);
      push(step, folds.beneath(step, done));
      undone.length = 0;
      return { writes, result: { kind: 'put back', steps: put.length, overtaken } };
    },
  };
}

/** One step the other way round: what is written, what is said of it, and the step that would turn that round. */
function turned(kind: 'undone' | 'redone', step: Step, cells: Cells) {
  const { writes, kept, overtaken } = back(step, cells);
  const gone: readonly HoleId[] = goneHoles(step, writes, cells);
  const result = { kind, step: step.edit, overtaken, ...(gone.length > 0 && { gone }) };
  return { kept, turnedBack: { writes, result } };
}

/** Steps taken back one after the other, the last first: what is written in the end. */
function allBack(steps: readonly Step[], cells: Cells) {
  const last = new Map<string, Write>();
  const overtaken = new Set<string>();
  let now = cells;
  for (const step of [...steps].reverse()) {
    const { writes, theirs } = back(step, now);
    for (const write of writes) last.set(nameOf(write), write);
    for (const at of theirs) overtaken.add(nameOf(at));
    now = withWrites(now, writes);
  }
  return { writes: [...last.values()], overtaken: overtaken.size };
}

function nameOf({ root, group, part }: Omit<Write, 'value'>): string {
  return `${root} ${group} ${part}`;
}
