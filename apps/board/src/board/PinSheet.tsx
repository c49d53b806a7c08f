import type { HoleId, PartId } from '@loopwright/model';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { Frame } from '../live/frame.ts';
import { namesOf, partWords } from '../reading/names.ts';
import type { DoEdit } from './parts.ts';

/** Pinned parts somebody took hold of. */
export interface PinQuestion {
  readonly hole: HoleId;
  readonly parts: readonly PartId[];
}

interface PinSheetProps {
  readonly question: PinQuestion;
  readonly frame: Frame;
  readonly edit: DoEdit;
  readonly onClose: () => void;
}

/** Asks before a pinned part is moved; taking the pin out is a step of its own, and can be undone. */
export function PinSheet({ question, frame, edit, onClose }: PinSheetProps) {
  const { plan, routing } = frame;
  const number = namesOf(plan, routing, 'metres').number(question.hole);
  const words = question.parts.map((part) => partWords(plan.teeSets, number, part)).join(', ');
  const unpin = () => {
    for (const part of question.parts) edit({ edit: 'unpin', routing: routing.id, hole: question.hole, part });
    onClose();
  };
  return (
    <ModalOverlay className="modal-cover" isOpen onOpenChange={onClose} isDismissable>
      <Modal className="modal">
        <Dialog role="alertdialog">
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
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
