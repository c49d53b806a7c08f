import { type DragEvent, type ReactNode, useState } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { HomeProps } from '../board/parts.ts';
import { sortFiles } from '../images/dropped-files.ts';
import { usePastedFiles } from '../images/use-pasted-files.ts';
import { useSteady } from '../reading/use-steady.ts';
import { ImportSheet } from './ImportSheet.tsx';
import { useImport } from './use-import.ts';

interface DropOnBoardProps extends HomeProps {
  /** Pictures are laid on the board that is open. */
  readonly onPictures: (files: readonly File[]) => void;
  readonly children: ReactNode;
}

const carriesFiles = (event: DragEvent) => event.dataTransfer.types.includes('Files');

/** A picture dropped or pasted on an open board is laid on it. A course never touches it: a new board is offered instead. */
export function DropOnBoard({ children, onPictures, ...home }: DropOnBoardProps) {
  const importing = useImport(home);
  const [open, setOpen] = useState(false);
  const take = useSteady(async (files: readonly File[]) => {
    const { pictures, worldFiles, others } = await sortFiles(files);
    if (pictures.length + worldFiles.length > 0) onPictures([...pictures, ...worldFiles]);
    if (others.length === 0 && files.length > 0) return;
    setOpen(true);
    importing.dropFiles(others);
  });
  usePastedFiles(take);
  const drop = (event: DragEvent) => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    void take([...event.dataTransfer.files]);
  };
  const close = () => {
    setOpen(false);
    importing.putAway();
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping a file has its equal in the menu, a new board from a file
    <div
      className="drop-on-board"
      onDragOver={(event) => {
        if (carriesFiles(event)) event.preventDefault();
      }}
      onDrop={drop}
    >
      {children}
      <ModalOverlay className="modal-cover" isOpen={open} onOpenChange={close} isDismissable>
        <Modal className="modal">
          <Dialog className="import-dialog">
            <Heading slot="title" className="import__title">
              A new board from this file
            </Heading>
            <p className="soft">The board that is open stays as it is.</p>
            <ImportSheet importing={importing} />
            <Button className="button button--quiet" onPress={close}>
              Back to the board
            </Button>
          </Dialog>
        </Modal>
      </ModalOverlay>
    </div>
  );
}
