import type { NamedEdit } from '@loopwright/document';
import type { Change } from '../board/parts.ts';
import type { LiveDrag } from './frame.ts';

/** Chooses the drag whose ripple is shown. */
export interface Focus {
  /** Mine before anybody else's, else the one that was shown already, else the first of those not passed over. */
  choose(mine: NamedEdit | undefined, others: readonly LiveDrag[], shown: Change['by']): LiveDrag | undefined;
  /** Something was written: what it did stays on the page until somebody picks up anew. */
  passOver(others: readonly LiveDrag[]): void;
}

export function openFocus(): Focus {
  let passedOver: ReadonlySet<number> = new Set();
  const clientsOf = (drags: readonly LiveDrag[]) => drags.flatMap(({ by }) => (by === 'me' ? [] : [by.client]));
  return {
    choose: (mine, others, shown) => {
      const dragging = new Set(clientsOf(others));
      passedOver = new Set([...passedOver].filter((client) => dragging.has(client)));
      if (mine) return { by: 'me', edit: mine };
      const fresh = others.filter(({ by }) => by !== 'me' && !passedOver.has(by.client));
      return fresh.find(({ by }) => by !== 'me' && by.name === shown?.name) ?? fresh[0];
    },
    passOver: (others) => {
      passedOver = new Set(clientsOf(others));
    },
  };
}
