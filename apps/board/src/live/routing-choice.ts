import type { Plan, RoutingId } from '@loopwright/model';
import { flipTo } from './flip.ts';

interface RoutingChoiceParts {
  readonly plan: { readonly read: () => Plan };
  readonly shown: () => RoutingId | undefined;
  readonly show: (routing: RoutingId) => void;
  readonly say: (words: string) => void;
}

/** Which routing is shown, with the one before it remembered. */
export function openRoutingChoice({ plan, shown, show, say }: RoutingChoiceParts) {
  let before: RoutingId | undefined;
  const showRouting = (routing: RoutingId) => {
    const now = shown();
    if (now !== routing) before = now;
    show(routing);
  };
  const flipRouting = () => {
    const now = shown();
    const other = now === undefined ? undefined : flipTo(plan.read(), now, before);
    if (other === undefined) say('There is one routing on this board. Copy it to flip between two.');
    else showRouting(other);
  };
  return { showRouting, flipRouting };
}
