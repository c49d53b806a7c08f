import type { NamedEdit } from '@loopwright/document';
import { holeOf, type Routing } from '@loopwright/model';
import type { Selection } from '../board/parts.ts';
import { chosenHoles } from './chosen-holes.ts';
import { severalEdit } from './several-edit.ts';

/** What Delete does with what is picked out: the edit, or words where there is none. */
export type TakenOut =
  | { readonly kind: 'edit'; readonly edit: NamedEdit; readonly select: Selection }
  | { readonly kind: 'refused'; readonly words: string }
  | { readonly kind: 'nothing' };

/**
 * A turn point goes, a placed tee is proposed again, a green stays. Holes of the round go to the spare tray; holes that
 * are all spare go off the plan.
 */
export function takenOut(routing: Routing, selection: Selection): TakenOut {
  const chosen = chosenHoles(routing, selection);
  const [only] = chosen;
  if (only === undefined) return { kind: 'nothing' };
  const of = { routing: routing.id, hole: only };
  const { part } = selection;
  if (chosen.length === 1 && part !== undefined) {
    const id = part.slice(part.indexOf(':') + 1);
    const select = { hole: only };
    if (part === 'green')
      return { kind: 'refused', words: 'A hole keeps its green. Choose the whole hole to take it out.' };
    if (holeOf(routing, only)?.pinned.includes(part)) {
      return { kind: 'refused', words: 'That part is pinned: take the pin out first.' };
    }
    const isTurn = part.startsWith('turn:');
    const edit: NamedEdit = isTurn
      ? { ...of, edit: 'remove turn point', turn: id }
      : { ...of, edit: 'propose tee', teeSet: id };
    return { kind: 'edit', edit, select };
  }
  const edit = takeOutEdit(routing, chosen);
  if (edit) return { kind: 'edit', edit, select: selection };
  const removed = removeEdit(routing, chosen);
  return removed ? { kind: 'edit', edit: removed, select: {} } : { kind: 'nothing' };
}

/** Takes those of the holes that are in the round out of it, as one step. */
export function takeOutEdit(routing: Routing, holes: readonly string[]): NamedEdit | undefined {
  const inLoops = holes.filter((hole) => holeOf(routing, hole)?.seat.in === 'loop');
  return severalEdit(
    `take out ${inLoops.length} holes`,
    inLoops.map((hole) => ({ edit: 'take out', routing: routing.id, hole })),
  );
}

/** Takes the holes off the plan, as one step. */
export function removeEdit(routing: Routing, holes: readonly string[]): NamedEdit | undefined {
  return severalEdit(
    `remove ${holes.length} holes`,
    holes.map((hole) => ({ edit: 'remove hole', routing: routing.id, hole })),
  );
}
