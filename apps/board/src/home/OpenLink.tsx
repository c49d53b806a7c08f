import { useState } from 'react';
import { Button, FieldError, Form, Input, Label, TextField } from 'react-aria-components';
import type { HomeProps } from '../board/parts.ts';
import { readLink } from './link-address.ts';

/** A board is opened by its link alone: there is no list of boards. */
export function OpenLink({ openLink }: Pick<HomeProps, 'openLink'>) {
  const [pasted, setPasted] = useState('');
  const [problem, setProblem] = useState('');
  const open = () => {
    const read = readLink(pasted, window.location.origin);
    if (read.kind === 'link') openLink(read.link);
    else setProblem(read.why);
  };
  return (
    <section className="home__part" aria-labelledby="home-link">
      <h2 id="home-link" className="home__heading">
        A board you were invited to
      </h2>
      <Form
        className="import__form"
        onSubmit={(event) => {
          event.preventDefault();
          open();
        }}
      >
        <TextField
          className="field"
          value={pasted}
          isInvalid={problem !== ''}
          onChange={(text) => {
            setPasted(text);
            setProblem('');
          }}
        >
          <Label className="field__label">Link to the board</Label>
          <Input className="input" />
          <FieldError className="problem">{problem}</FieldError>
        </TextField>
        <div className="row">
          <Button type="submit" className="button">
            Open the board
          </Button>
        </div>
      </Form>
    </section>
  );
}
