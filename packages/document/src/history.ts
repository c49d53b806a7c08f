import type { HoleId } from '@loopwright/model';
import { type Cells, type Write, withWrites } from './cells.ts';
import type { DoneStep, PutBackResult, UndoResult } from './contract.ts';
import type { NamedEdit } from './edits/named-edit.ts';
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

/** What is known of a step that put others back. */
interface Folded {
  /** The list of done steps before it. */
  readonly tried: readonly Step[];
  /** Those it put back, the last ones of that list. */
  readonly put: readonly Step[];
  /** The list beneath it after. */
  readonly left: readonly Step[];
}

export function openHistory(): History {
  let done: readonly Step[] = [];
  const undone: Step[] = [];
  let next = 1;
  const folded = new WeakMap<Step, Folded>();

  const keepFold = (from: Step, to: Step): Step => {
    const fold = folded.get(from);
    if (fold) folded.set(to, fold);
    return to;
  };
  const push = (step: Step, onto: readonly Step[]) => {
    done = [...onto, step].slice(-MOST_STEPS);
  };
  /** Steps as they were done: of one that put others back first those, then it. What the first put back stands again. */
  const asDone = ([first, ...more]: readonly Step[]): readonly Step[] => {
    const unfolded = more.flatMap((step) => [...asDone(folded.get(step)?.put ?? []), step]);
    return first ? [first, ...unfolded] : [];
  };
  const turned = (kind: 'undone' | 'redone', step: Step, cells: Cells) => {
    const { writes, kept, overtaken } = back(step, cells);
    const gone: readonly HoleId[] = goneHoles(step, writes, cells);
    const result = { kind, step: step.edit, overtaken, ...(gone.length > 0 && { gone }) };
    return { kept: keepFold(step, kept), turnedBack: { writes, result } };
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
      done = folded.get(step)?.tried ?? done.slice(0, -1);
      undone.push(kept);
      return turnedBack;
    },
    redo(cells) {
      const step = undone.pop();
      if (!step) return NOTHING;
      const { kept, turnedBack } = turned('redone', step, cells);
      push(kept, folded.get(step)?.left ?? done);
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
      const put = at < 0 ? [] : done.slice(at);
      const [first] = put;
      if (!first) return NOTHING;
      const { writes, overtaken } = allBack(asDone(put), cells);
      const steps = put.length;
      const left = folded.get(first)?.tried ?? done.slice(0, at);
      const step: Step = {
        number: next++,
        edit: { edit: 'put back what was tried', steps },
        changes: changesOf(writes, cells),
      };
      folded.set(step, { tried: done, put, left });
      push(step, left);
      undone.length = 0;
      return { writes, result: { kind: 'put back', steps, overtaken } };
    },
  };
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
