import { type DragEvent, type ReactNode, useState } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { HomeProps } from '../board/parts.ts';
import { usePastedFiles } from '../images/use-pasted-files.ts';
import { useSteady } from '../reading/use-steady.ts';
import { ImportSheet } from './ImportSheet.tsx';
import { useImport } from './use-import.ts';

interface DropOnBoardProps extends HomeProps {
  /** Pictures are laid on the board that is open. */
  readonly onPictures: (files: readonly File[]) => void;
  /** What lies on the land is brought onto the board that is open. */
  readonly onFeatures: (file: File) => void;
  readonly children: ReactNode;
}

const carriesFiles = (event: DragEvent) => event.dataTransfer.types.includes('Files');

/**
 * A picture dropped or pasted on an open board is laid on it. Of another file it is asked whether what lies on the land
 * is added to the board, or a new board made of it: a course never touches the board that is open.
 */
export function DropOnBoard({ children, onPictures, onFeatures, ...home }: DropOnBoardProps) {
  const importing = useImport(home);
  const [open, setOpen] = useState(false);
  const [asked, setAsked] = useState<File>();
  const take = useSteady(async (files: readonly File[]) => {
    const { pictures, worldFiles, others } = await (await import('../images/dropped-files.ts')).sortFiles(files);
    if (pictures.length + worldFiles.length > 0) onPictures([...pictures, ...worldFiles]);
    if (others.length === 0 && files.length > 0) return;
    setOpen(true);
    const [file] = others;
    if (file && others.length === 1) setAsked(file);
    else importing.dropFiles(others);
  });
  usePastedFiles(take);
  const drop = (event: DragEvent) => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    void take([...event.dataTransfer.files]);
  };
  const close = () => {
    setOpen(false);
    setAsked(undefined);
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
            {asked ? (
              <WhatFor
                file={asked}
                onFeatures={() => {
                  onFeatures(asked);
                  close();
                }}
                onBoard={() => {
                  setAsked(undefined);
                  importing.dropFiles([asked]);
                }}
              />
            ) : (
              <>
                <Heading slot="title" className="import__title">
                  A new board from this file
                </Heading>
                <p className="soft">The board that is open stays as it is.</p>
                <ImportSheet importing={importing} />
              </>
            )}
            <Button className="button button--quiet" onPress={close}>
              Back to the board
            </Button>
          </Dialog>
        </Modal>
      </ModalOverlay>
    </div>
  );
}

interface WhatForProps {
  readonly file: File;
  readonly onFeatures: () => void;
  readonly onBoard: () => void;
}

/** What a dropped file is for. */
function WhatFor({ file, onFeatures, onBoard }: WhatForProps) {
  return (
    <>
      <Heading slot="title" className="import__title">
        What is {file.name} for?
      </Heading>
      <div className="row">
        <Button className="button button--main" autoFocus onPress={onFeatures}>
          Add what lies on the land to this board
        </Button>
        <Button className="button" onPress={onBoard}>
          Make a new board from it
        </Button>
      </div>
    </>
  );
}
