import { LIMITS } from '@loopwright/model';
import { type ReactNode, useState } from 'react';
import { Button, FieldError, Form, Heading, Input, Label, TextField } from 'react-aria-components';
import { Sheet } from './Sheet.tsx';

interface NameSheetProps {
  readonly title: string;
  readonly label: string;
  /** What stands in the field at first. */
  readonly name: string;
  /** On the button, e.g. 'Copy'. */
  readonly does: string;
  readonly onName: (name: string) => void;
  readonly onClose: () => void;
  /** Further fields of the same question. */
  readonly children?: ReactNode;
}

/** Asks for a name; an empty one is refused in words, and nothing that was typed is lost. */
export function NameSheet({ title, label, name, does, onName, onClose, children }: NameSheetProps) {
  const [typed, setTyped] = useState(name);
  return (
    <Sheet onClose={onClose}>
      <Form
        className="sheet"
        onSubmit={(event) => {
          event.preventDefault();
          onName(typed.trim());
          onClose();
        }}
      >
        <Heading slot="title">{title}</Heading>
        <TextField
          className="field"
          value={typed}
          onChange={setTyped}
          maxLength={LIMITS.name}
          autoFocus
          validate={(value) => (value.trim() === '' ? 'It needs a name.' : null)}
          validationBehavior="native"
        >
          <Label className="field__label">{label}</Label>
          <Input className="input" dir="auto" onFocus={(event) => event.currentTarget.select()} />
          <FieldError className="field__wrong small" />
        </TextField>
        {children}
        <div className="row">
          <Button type="submit" className="button button--main">
            {does}
          </Button>
          <Button className="button" onPress={onClose}>
            Leave it
          </Button>
        </div>
      </Form>
    </Sheet>
  );
}
