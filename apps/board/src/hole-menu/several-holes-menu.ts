import type { NamedEdit } from '@loopwright/document';
import type { Hole, HoleId, PartId } from '@loopwright/model';
import { VERDICTS } from '../drawer/points/hole-choices.ts';
import { editFor, lastPlace } from '../round/bead-moves.ts';
import { partsInPlay } from '../tools/nudge.ts';
import { severalEdit } from '../tools/several-edit.ts';
import { removeEdit, takeOutEdit } from '../tools/take-out.ts';
import type { MenuEntry, MenuPart } from './menu-entry.ts';
import type { MenuSource } from './menu-source.ts';

/** What can be done with several holes at once: each is one step. */
export function severalHolesMenu(source: MenuSource, holes: readonly Hole[]): readonly MenuPart[] {
  return [
    { title: 'On the ground', entries: groundEntries(source, holes) },
    { title: 'In the round', entries: roundEntries(source, holes) },
    { title: 'Verdict', entries: VERDICTS.map((verdict) => verdictEntry(source, holes, verdict)) },
    { title: 'The holes', entries: wholeEntries(source, holes) },
  ];
}

const entry = (title: string, edit: NamedEdit | undefined, why: string): MenuEntry =>
  edit ? { title, act: { do: 'edit', edit } } : { title, why };

function groundEntries({ routing }: MenuSource, holes: readonly Hole[]): readonly MenuEntry[] {
  const id = routing.id;
  const reversed = holes.map(({ id: hole }): NamedEdit => ({ edit: 'reverse hole', routing: id, hole }));
  const parts = (pinned: boolean) =>
    holes.flatMap((hole) =>
      partsInPlay(hole)
        .filter((part) => hole.pinned.includes(part) === pinned)
        .map((part) => ({ hole: hole.id, part })),
    );
  const pins = (edit: 'pin' | 'unpin', of: readonly { readonly hole: HoleId; readonly part: PartId }[]) =>
    severalEdit(
      `${edit} ${holes.length} holes`,
      of.map((each) => ({ ...each, edit, routing: id })),
    );
  return [
    entry('Reverse each of them', severalEdit(`reverse ${holes.length} holes`, reversed), ''),
    entry('Pin all their parts', pins('pin', parts(false)), 'Every part is pinned.'),
    entry('Take all their pins out', pins('unpin', parts(true)), 'No part is pinned.'),
  ];
}

function roundEntries({ routing, names }: MenuSource, holes: readonly Hole[]): readonly MenuEntry[] {
  const ids = holes.map(({ id }) => id);
  const [one, two, ...more] = ids;
  const pair = one !== undefined && two !== undefined && more.length === 0;
  const of = { routing: routing.id, hole: one ?? '', with: two ?? '' };
  const both = pair ? ` of ${names.number(one)} and ${names.number(two)}` : '';
  const placed = holes.every(({ seat }) => seat.in === 'loop');
  const paired: readonly MenuEntry[] = pair
    ? [
        entry(`Swap places${both}`, placed ? { ...of, edit: 'swap places' } : undefined, 'Both must be in the round.'),
        entry(`Exchange corridors${both}`, { ...of, edit: 'exchange corridors' }, ''),
      ]
    : [];
  return [
    ...paired,
    entry('Take out to the spare tray', takeOutEdit(routing, ids), 'None of them is in the round.'),
    entry('Bring back, last in the round', bringBackEdit(routing, holes), 'None of them is spare.'),
  ];
}

/** Spare holes come back one after the other, in the order they were picked. */
function bringBackEdit(routing: MenuSource['routing'], holes: readonly Hole[]): NamedEdit | undefined {
  const spare = holes.filter(({ seat }) => seat.in === 'spare').map(({ id }) => id);
  const last = lastPlace(routing);
  if (last?.in !== 'loop') return undefined;
  const edits = spare.flatMap((hole, index) => {
    const edit = editFor(routing, hole, { ...last, after: spare[index - 1] ?? last.after });
    return edit ? [edit] : [];
  });
  return severalEdit(`bring back ${spare.length} holes`, edits);
}

function verdictEntry({ routing }: MenuSource, holes: readonly Hole[], verdict: Hole['verdict']): MenuEntry {
  const edits = holes
    .filter((hole) => hole.verdict !== verdict)
    .map(
      ({ id: hole, verdictReason: reason = '' }): NamedEdit => ({
        edit: 'judge',
        routing: routing.id,
        hole,
        verdict,
        reason,
      }),
    );
  return entry(verdict, severalEdit(`verdict on ${holes.length} holes`, edits), 'So they all are.');
}

function wholeEntries({ routing, freshId }: MenuSource, holes: readonly Hole[]): readonly MenuEntry[] {
  const ids = holes.map(({ id }) => id);
  const copies = ids.map(
    (hole): NamedEdit => ({
      edit: 'copy hole',
      routing: routing.id,
      hole,
      as: freshId('h'),
      by: { x: 40, y: -40 },
    }),
  );
  const removed = removeEdit(routing, ids);
  return [
    entry('Copy to the spare tray', severalEdit(`copy ${ids.length} holes`, copies), ''),
    ...(removed
      ? [{ title: 'Remove from the plan', act: { do: 'edit', edit: removed, select: {} } } as const satisfies MenuEntry]
      : []),
  ];
}
