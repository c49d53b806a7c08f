import type { HoleId, Routing } from '@loopwright/model';
import type { MouseEvent } from 'react';
import type { RoundProps } from '../board/parts.ts';
import { choosing, chosenHoles, holesInOrder, withOrWithout } from '../tools/chosen-holes.ts';
import { takeOutEdit } from '../tools/take-out.ts';

type ChoicesParts = Pick<RoundProps, 'routing' | 'selection' | 'edit' | 'select' | 'goTo'>;

/** Picking beads out, one or several. */
export function useBeadChoices({ routing, selection, edit, select, goTo }: ChoicesParts) {
  const chosen = chosenHoles(routing, selection);
  /** Those picked out when it is one of them, or it alone. */
  const onTakeOut = (hole: HoleId) => {
    const step = takeOutEdit(routing, chosen.includes(hole) ? chosen : [hole]);
    if (step) edit(step);
  };
  return {
    chosen,
    onTakeOut,
    /** The keyboard came to a bead. */
    onReach: (hole: HoleId, how: 'alone' | 'further') =>
      select(how === 'alone' ? { hole } : choosing([...chosen, hole])),
    onChoose: (event: MouseEvent, hole: HoleId) => {
      if (event.ctrlKey || event.metaKey) return select(withOrWithout(routing, selection, hole));
      if (event.shiftKey) return select(choosing(upTo(routing, selection.hole ?? hole, hole)));
      select({ hole });
      return goTo({ kind: 'hole', hole });
    },
    onChooseWalk: (key: string) => {
      select({ walk: key });
      goTo({ kind: 'walk', key });
    },
  };
}

/** Every hole from one to another, whichever comes first; the second is the one picked out last. */
function upTo(routing: Routing, from: HoleId, to: HoleId): readonly HoleId[] {
  const order = holesInOrder(routing);
  const [one, other] = [order.indexOf(from), order.indexOf(to)];
  const between = order.slice(Math.min(one, other), Math.max(one, other) + 1);
  return [...between.filter((hole) => hole !== to), to];
}
