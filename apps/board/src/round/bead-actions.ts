import type { NamedEdit } from '@loopwright/document';
import type { HoleId, Routing, Verdict } from '@loopwright/model';
import { freshId } from '../reading/fresh-id.ts';
import type { BeadAction } from './BeadMenu.tsx';
import { editFor, lastPlace, placeOf } from './bead-moves.ts';
import { editOfLoopAction } from './loop-actions.ts';

/** The edit an action of the menu makes; `undefined` where it makes none ('pick up', 'draw', or no loop to come back to). */
export function editOfAction(routing: Routing, hole: HoleId, action: BeadAction): NamedEdit | undefined {
  const of = { routing: routing.id, hole };
  switch (action.do) {
    case 'reverse':
      return { ...of, edit: 'reverse hole' };
    case 'take out':
      return { ...of, edit: 'take out' };
    case 'bring back': {
      const place = lastPlace(routing);
      return place && editFor(routing, hole, place);
    }
    case 'swap':
      return { ...of, edit: 'swap places', with: action.with };
    case 'insert':
      return insertAfter(routing, hole, action.spare);
    case 'split':
      return splitAfter(routing, hole);
    case 'judge':
      return judged(routing, hole, action.verdict);
    case 'pick up':
    case 'draw':
      return undefined;
  }
}

/** A spare hole comes into the round between this one and the next; those after it are renumbered. */
function insertAfter(routing: Routing, hole: HoleId, spare: HoleId): NamedEdit | undefined {
  const place = placeOf(routing, hole);
  return place?.in === 'loop' ? editFor(routing, spare, { ...place, after: hole }) : undefined;
}

function splitAfter(routing: Routing, hole: HoleId): NamedEdit | undefined {
  const place = placeOf(routing, hole);
  return place?.in === 'loop'
    ? editOfLoopAction(routing, place.loop, { do: 'split', after: hole }, freshId)
    : undefined;
}

/** A new verdict keeps the reason given before. */
function judged(routing: Routing, hole: HoleId, verdict: Verdict): NamedEdit {
  const reason = routing.holes.find(({ id }) => id === hole)?.verdictReason ?? '';
  return { edit: 'judge', routing: routing.id, hole, verdict, reason };
}
