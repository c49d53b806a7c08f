import type { NamedEdit } from '@loopwright/document';
import type { HoleId, Routing, Verdict } from '@loopwright/model';
import type { BeadAction } from './BeadMenu.tsx';
import { editFor, lastPlace } from './bead-moves.ts';

/** The edit an action of the menu makes; `undefined` where it makes none ('pick up', or no loop to come back to). */
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
    case 'judge':
      return judged(routing, hole, action.verdict);
    case 'pick up':
      return undefined;
  }
}

/** A new verdict keeps the reason given before. */
function judged(routing: Routing, hole: HoleId, verdict: Verdict): NamedEdit {
  const reason = routing.holes.find(({ id }) => id === hole)?.verdictReason ?? '';
  return { edit: 'judge', routing: routing.id, hole, verdict, reason };
}
