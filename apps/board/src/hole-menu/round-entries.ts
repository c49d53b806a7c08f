import type { Hole, HoleId, LoopId, Routing } from '@loopwright/model';
import { editFor, lastPlace } from '../round/bead-moves.ts';
import { editOfLoopAction } from '../round/loop-actions.ts';
import { choosing } from '../tools/chosen-holes.ts';
import { askToExchange, askToInsert, askToSwap, entryAsking } from './hole-questions.ts';
import type { MenuEntry } from './menu-entry.ts';
import type { MenuSource } from './menu-source.ts';

const LAST = 'It is the last hole of its loop.';

/** What can be done with the place of one hole in the round. */
export function roundEntries(source: MenuSource, hole: Hole): readonly MenuEntry[] {
  return hole.seat.in === 'loop' ? placedEntries(source, hole.id, hole.seat.loop) : spareEntries(source, hole.id);
}

function spareEntries(source: MenuSource, hole: HoleId): readonly MenuEntry[] {
  const { routing } = source;
  const asked = { ...source, hole };
  const place = lastPlace(routing);
  const edit = place && editFor(routing, hole, place);
  return [
    edit
      ? { title: 'Bring back, last in the round', act: { do: 'edit', edit } }
      : { title: 'Bring back', why: 'There is no loop to come back to.' },
    entryAsking('Bring back after …', askToInsert(asked)),
    entryAsking('Exchange corridors with …', askToExchange(asked)),
  ];
}

function placedEntries(source: MenuSource, hole: HoleId, loop: LoopId): readonly MenuEntry[] {
  const { routing } = source;
  const asked = { ...source, hole };
  return [
    entryAsking('Swap places with …', askToSwap(asked)),
    entryAsking('Exchange corridors with …', askToExchange(asked)),
    entryAsking('Play it after …', askToInsert(asked)),
    insertEntry(source, hole, loop),
    drawEntry(routing, hole),
    {
      title: 'Take out to the spare tray',
      act: { do: 'edit', edit: { edit: 'take out', routing: routing.id, hole } },
    },
    splitEntry(source, hole, loop),
  ];
}

/** A spare hole comes into the round after this one; those after it are renumbered. */
function insertEntry({ routing, names }: MenuSource, after: HoleId, loop: LoopId): MenuEntry {
  const title = 'Insert a spare hole after it …';
  if (routing.spare.length === 0) return { title, why: 'No hole is spare.' };
  const inside = routing.spare.flatMap((spare, place): MenuEntry[] => {
    const edit = editFor(routing, spare, { in: 'loop', loop, after });
    return edit ? [{ title: `S${place + 1} · ${names.number(spare)}`, act: { do: 'edit', edit } }] : [];
  });
  return { title, inside };
}

/** Two holes that follow each other are chosen: a hole that is drawn then goes between them. */
function drawEntry({ loops }: Routing, hole: HoleId): MenuEntry {
  const title = 'Draw a new hole after it';
  const holes = loops.find((loop) => loop.holes.includes(hole))?.holes ?? [];
  const next = holes[holes.indexOf(hole) + 1];
  if (next === undefined) return { title, why: LAST };
  return { title, act: { do: 'take', instrument: 'draw hole', select: choosing([next, hole]) } };
}

function splitEntry({ routing, freshId }: MenuSource, hole: HoleId, loop: LoopId): MenuEntry {
  const title = 'Split the loop after it';
  const isLast = routing.loops.find(({ id }) => id === loop)?.holes.at(-1) === hole;
  const edit = isLast ? undefined : editOfLoopAction(routing, loop, { do: 'split', after: hole }, freshId);
  return edit ? { title, act: { do: 'edit', edit } } : { title, why: LAST };
}
