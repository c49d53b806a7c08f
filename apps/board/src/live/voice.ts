import type { NamedEdit, Presence } from '@loopwright/document';
import type { RoutingId, SitePoint } from '@loopwright/model';
import type { Selection } from '../board/parts.ts';

/** What this page shows the others, kept together: each message holds all of it. */
interface Shown {
  readonly pointer: SitePoint | undefined;
  readonly selection: Selection;
  readonly routing: RoutingId | undefined;
  readonly drag: NamedEdit | undefined;
}

/** Says what changed of what the others see, with the rest as it was. */
export function openVoice(presence: Pick<Presence, 'say'>): (change: Partial<Shown>) => void {
  let shown: Shown = { pointer: undefined, selection: {}, routing: undefined, drag: undefined };
  return (change) => {
    shown = { ...shown, ...change };
    const { pointer, selection, routing, drag } = shown;
    presence.say({
      selection: holesOf(selection),
      ...(pointer ? { pointer } : {}),
      ...(routing === undefined ? {} : { routing }),
      ...(drag ? { drag } : {}),
    });
  };
}

const holesOf = ({ hole, also = [] }: Selection) => (hole === undefined ? also : [...also, hole]);
