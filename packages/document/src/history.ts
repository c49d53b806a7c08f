import { type Cells, valueAt, type Write } from './cells.ts';
import type { UndoResult } from './contract.ts';
import type { NamedEdit } from './edits/named-edit.ts';
import { isSameValue } from './plain-value.ts';

/** One key as an edit found it and left it. */
interface KeyChange {
  readonly at: Omit<Write, 'value'>;
  readonly before: unknown;
  readonly after: unknown;
}

/** One undo step: what was done, and the keys it changed. */
interface Step {
  readonly edit: NamedEdit;
  readonly changes: readonly KeyChange[];
}

/** Steps beyond this are forgotten, oldest first. */
const MOST_STEPS = 500;

/** What taking a step back, or doing it again, writes; and the step that would turn that round. */
export interface TurnedBack {
  readonly writes: readonly Write[];
  readonly result: UndoResult;
}

/**
 * One page's own steps. A step goes back by writing `before` to the keys that still hold `after`; keys that somebody
 * else has changed meanwhile stay theirs and are counted.
 */
export interface History {
  record(edit: NamedEdit, writes: readonly Write[], before: Cells): void;
  undo(cells: Cells): TurnedBack;
  redo(cells: Cells): TurnedBack;
  steps(): { readonly undo?: NamedEdit; readonly redo?: NamedEdit };
}

const NOTHING: TurnedBack = { writes: [], result: { kind: 'nothing' } };

export function openHistory(): History {
  const done: Step[] = [];
  const undone: Step[] = [];
  return {
    record(edit, writes, before) {
      const changes = writes.map((write): KeyChange => {
        const { value, ...at } = write;
        return { at, before: valueAt(before, at), after: value };
      });
      done.push({ edit, changes });
      if (done.length > MOST_STEPS) done.shift();
      undone.length = 0;
    },
    undo(cells) {
      const step = done.pop();
      if (!step) return NOTHING;
      const { writes, kept, overtaken } = back(step, cells);
      undone.push(kept);
      return { writes, result: { kind: 'undone', step: step.edit, overtaken } };
    },
    redo(cells) {
      const step = undone.pop();
      if (!step) return NOTHING;
      const { writes, kept, overtaken } = back(step, cells);
      done.push(kept);
      return { writes, result: { kind: 'redone', step: step.edit, overtaken } };
    },
    steps() {
      const undo = done.at(-1)?.edit;
      const redo = undone.at(-1)?.edit;
      return { ...(undo && { undo }), ...(redo && { redo }) };
    },
  };
}

/** The writes that take a step back where it still stands, and the step the other way round. */
function back(step: Step, cells: Cells) {
  const mine = step.changes.filter(({ at, after }) => isSameValue(valueAt(cells, at), after));
  return {
    writes: mine.map(({ at, before }): Write => ({ ...at, value: before })),
    kept: { edit: step.edit, changes: mine.map(({ at, before, after }) => ({ at, before: after, after: before })) },
    overtaken: step.changes.length - mine.length,
  };
}
