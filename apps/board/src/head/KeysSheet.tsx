import './keys-sheet.css';
import { useState } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { readKept, writeKept } from '../live/kept.ts';
import { Choices } from '../style/Choices.tsx';
import { parseSingleKeys, SINGLE_KEYS, type SingleKeys } from '../tools/single-keys.ts';
import { KEYS, type KeyGroup } from './keys.ts';

interface KeysSheetProps {
  readonly onClose: () => void;
}

const CHOICES = SINGLE_KEYS.map((key) => ({ key, words: key }));

/** Every key of the board on one sheet, to look at and to print, and where keys of one letter are heard. */
export function KeysSheet({ onClose }: KeysSheetProps) {
  return (
    <ModalOverlay className="modal-cover keys-cover" isOpen onOpenChange={onClose} isDismissable>
      <Modal className="modal keys-modal">
        <Dialog className="keys">
          <Heading slot="title" className="keys__title">
            Keys
          </Heading>
          <SingleKeysChoice />
          <div className="keys__groups">
            {KEYS.map((group) => (
              <Group key={group.where} group={group} />
            ))}
          </div>
          <div className="row no-print">
            <Button slot="close" className="button button--main">
              Close
            </Button>
            <Button className="button" onPress={() => window.print()}>
              Print
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

/** Kept on this machine. */
function SingleKeysChoice() {
  const [heard, setHeard] = useState(() => parseSingleKeys(readKept('single keys')));
  const choose = (keys: SingleKeys) => {
    writeKept('single keys', keys);
    setHeard(keys);
  };
  return (
    <div className="keys__single no-print">
      <span>Keys of one letter or sign work</span>
      <Choices label="Keys of one letter or sign work" choices={CHOICES} chosen={heard} onChoose={choose} />
      {heard === 'off' && (
        <span className="small soft">
          Everything they do is in the menus, the instruments’ tray and the drawer; this sheet is in the menu of the
          head.
        </span>
      )}
    </div>
  );
}

function Group({ group }: { readonly group: KeyGroup }) {
  return (
    <section>
      <h3 className="keys__where">{group.where}</h3>
      <dl className="keys__list">
        {group.rows.map(({ press, does }) => (
          <div key={press} className="keys__row">
            <dt>
              <kbd>{press}</kbd>
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
