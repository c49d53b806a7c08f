import type { ReactNode } from 'react';
import { Dialog, Modal, ModalOverlay } from 'react-aria-components';

interface SheetProps {
  readonly onClose: () => void;
  readonly children: ReactNode;
  readonly role?: 'dialog' | 'alertdialog';
}

/** A sheet of paper over the board; its `Heading slot="title"` names it. Esc or a press beside it puts it away. */
export function Sheet({ onClose, children, role = 'dialog' }: SheetProps) {
  return (
    <ModalOverlay className="modal-cover" isOpen isDismissable onOpenChange={(open) => !open && onClose()}>
      <Modal className="modal">
        <Dialog role={role}>{children}</Dialog>
      </Modal>
    </ModalOverlay>
  );
}
