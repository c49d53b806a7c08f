import { Button, Heading } from 'react-aria-components';
import { Sheet } from './Sheet.tsx';

interface SureSheetProps {
  readonly title: string;
  readonly words: string;
  /** On the button, e.g. 'Remove it'. */
  readonly does: string;
  readonly onSure: () => void;
  readonly onClose: () => void;
}

/** Asks before something is taken away; leaving it is where the keyboard starts. */
export function SureSheet({ title, words, does, onSure, onClose }: SureSheetProps) {
  return (
    <Sheet onClose={onClose} role="alertdialog">
      <div className="sheet">
        <Heading slot="title">{title}</Heading>
        <p>{words}</p>
        <div className="row">
          <Button className="button button--main" autoFocus onPress={onClose}>
            Leave it
          </Button>
          <Button
            className="button"
            onPress={() => {
              onSure();
              onClose();
            }}
          >
            {does}
          </Button>
        </div>
      </div>
    </Sheet>
  );
}
