import { Button } from 'react-aria-components';
import type { Watched } from '../../live/slot.ts';
import { useWatched } from '../../live/use-watched.ts';
import { Choices } from '../../style/Choices.tsx';
import type { Bench } from '../instrument.ts';
import { LegsField } from './LegsField.tsx';
import { RodShelf } from './RodShelf.tsx';
import type { RodChoice } from './rod-choice.ts';
import type { RodHand } from './rod-hand.ts';

/** A rod in the hand, with the bench it works on. */
export interface HeldRod {
  readonly bench: Bench;
  readonly hand: RodHand;
}

interface RodOptionsProps {
  readonly held: Watched<HeldRod | undefined>;
  readonly choice: RodChoice;
}

const ENDS = [
  { key: 'tee', words: 'Pinned at the tee' },
  { key: 'green', words: 'At the green' },
] as const;

/** What may be chosen beside the rod: its legs, the end that is pinned, rods kept before, and what becomes of it. */
export function RodOptions({ held, choice }: RodOptionsProps) {
  const rod = useWatched(held);
  const end = useWatched(choice.end);
  const legs = useWatched(choice.legs);
  if (!rod) return null;
  const { units } = rod.bench.reading();
  return (
    <>
      <LegsField legs={legs} units={units} onLegs={choice.legs.set} />
      <RodShelf legs={legs} units={units} onLegs={choice.legs.set} />
      <Choices label="The rod is pinned at" choices={ENDS} chosen={end} onChoose={choice.end.set} />
      <Button className="button button--small" onPress={rod.hand.leaveLying}>
        Leave the rod lying
      </Button>
    </>
  );
}
