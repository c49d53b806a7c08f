import { Button, Heading } from 'react-aria-components';
import type { Frame } from '../live/frame.ts';
import { namesOf, partWords } from '../reading/names.ts';
import { Sheet } from '../style/Sheet.tsx';
import type { HeldParts } from '../tools/tool.ts';
import type { DoEdit } from './parts.ts';

interface PinSheetProps {
  /** Pinned parts somebody took hold of, by hole. */
  readonly question: readonly HeldParts[];
  readonly frame: Frame;
  readonly edit: DoEdit;
  readonly onClose: () => void;
}

/** Asks before a pinned part is moved; taking the pin out is a step of its own, and can be undone. */
export function PinSheet({ question, frame, edit, onClose }: PinSheetProps) {
  const { plan, routing } = frame;
  const names = namesOf(plan, routing, 'metres');
  const words = question
    .flatMap(({ hole, parts }) => parts.map((part) => partWords(plan.teeSets, names.number(hole), part)))
    .join(', ');
  const unpin = () => {
    const unpins = question.flatMap(({ hole, parts }) =>
      parts.map((part) => ({ edit: 'unpin' as const, routing: routing.id, hole, part })),
    );
    const [only] = unpins;
    if (only && unpins.length === 1) edit(only);
    else edit({ edit: 'several', does: `take out ${unpins.length} pins`, edits: unpins });
    onClose();
  };
  return (
    <Sheet onClose={onClose} role="alertdialog">
      <Heading slot="title">Pinned: {words}</Heading>
      <p>A pinned part stays where it is until somebody takes the pin out. Nothing was moved.</p>
      <div className="row">
        <Button className="button button--main" onPress={onClose} autoFocus>
          Leave it pinned
        </Button>
        <Button className="button" onPress={unpin}>
          Take the pin out
        </Button>
      </div>
    </Sheet>
  );
}
