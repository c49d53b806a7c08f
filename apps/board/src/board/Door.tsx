import { useState } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';

interface DoorProps {
  readonly title: string;
  readonly words?: string;
  readonly onAgain?: () => void;
  /** What `onAgain` is called, when it is not trying again. */
  readonly again?: string;
}

/** What is shown while a board is not open: what happened, what is safe, what to do. */
export function Door({ title, words, onAgain, again = 'Try again' }: DoorProps) {
  return (
    <main className="door">
      <div className="door__sheet">
        <h1>{title}</h1>
        {words && <p role="alert">{words}</p>}
        <p className="row">
          {onAgain && (
            <Button className="button button--main" onPress={onAgain}>
              {again}
            </Button>
          )}
          {words && (
            <a className="button" href="/">
              To the home page
            </a>
          )}
        </p>
      </div>
    </main>
  );
}

/** Asks once how the others shall see this person. */
export function AskName({ onName }: { readonly onName: (name: string) => void }) {
  const [name, setName] = useState('');
  return (
    <main className="door">
      <Form
        className="door__sheet"
        onSubmit={(event) => {
          event.preventDefault();
          onName(name.trim());
        }}
      >
        <h1>You are invited to a board</h1>
        <TextField className="field" value={name} onChange={setName} maxLength={60} isRequired autoFocus>
          <Label className="field__label">Your name, as the others will see it</Label>
          <Input className="input" autoComplete="name" />
        </TextField>
        <Button type="submit" className="button button--main">
          Enter
        </Button>
      </Form>
    </main>
  );
}

interface ClosedProps {
  readonly words: string;
  readonly onDraft?: () => void;
}

/** The server closed the board for good: said over the board, which can still be looked at. */
export function Closed({ words, onDraft }: ClosedProps) {
  return (
    <div className="closed" role="alert">
      <p>{words}</p>
      <p className="row">
        {onDraft && (
          <Button className="button button--main" onPress={onDraft}>
            Download the draft
          </Button>
        )}
        <Button className={onDraft ? 'button' : 'button button--main'} onPress={() => window.location.reload()}>
          Reload the page
        </Button>
      </p>
    </div>
  );
}
