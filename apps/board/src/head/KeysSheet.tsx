import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { KEYS } from './keys.ts';

interface KeysSheetProps {
  readonly open: boolean;
  readonly onClose: () => void;
}

/** Every key of the board on one sheet. */
export function KeysSheet({ open, onClose }: KeysSheetProps) {
  return (
    <ModalOverlay className="modal-cover" isOpen={open} onOpenChange={onClose} isDismissable>
      <Modal className="modal">
        <Dialog className="keys">
          <Heading slot="title" className="keys__title">
            Keys
          </Heading>
          {KEYS.map(({ where, keys }) => (
            <section key={where}>
              <h3 className="keys__where">{where}</h3>
              <dl className="keys__list">
                {keys.map(({ press, does }) => (
                  <div key={press} className="keys__row">
                    <dt>
                      <kbd>{press}</kbd>
                    </dt>
                    <dd>{does}</dd>
                  </div>
                ))}
              </dl>
            </section>
          ))}
          <Button slot="close" className="button button--main">
            Close
          </Button>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
