import { type LengthUnit, LIMITS } from '@loopwright/model';
import { useState } from 'react';
import { Button, FieldError, Form, Heading, Input, Label, TextArea, TextField } from 'react-aria-components';
import type { DoEdit } from '../../board/parts.ts';
import { Choices } from '../../style/Choices.tsx';
import { Sheet } from '../../style/Sheet.tsx';
import { type SiteWords, siteEdit } from './site-edit.ts';

const UNITS = [
  { key: 'yards', words: 'yards' },
  { key: 'metres', words: 'metres' },
] as const satisfies readonly { readonly key: LengthUnit; readonly words: string }[];

interface SiteSheetProps {
  readonly site: SiteWords;
  readonly edit: DoEdit;
  readonly onClose: () => void;
}

/** Name and note of the site, and the unit in which people on this board begin to read it. */
export function SiteSheet({ site, edit, onClose }: SiteSheetProps) {
  const [name, setName] = useState(site.name);
  const [note, setNote] = useState(site.note);
  const [units, setUnits] = useState(site.units);
  const keep = () => {
    const step = siteEdit(site, { name, note, units });
    if (step) edit(step);
    onClose();
  };
  return (
    <Sheet onClose={onClose}>
      <Form
        className="sheet"
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <Heading slot="title">The site</Heading>
        <TextField
          className="field"
          value={name}
          onChange={setName}
          maxLength={LIMITS.name}
          autoFocus
          validate={(value) => (value.trim() === '' ? 'The site needs a name.' : null)}
        >
          <Label className="field__label">Name</Label>
          <Input className="input" dir="auto" />
          <FieldError className="field__wrong small" />
        </TextField>
        <TextField className="field" value={note} onChange={setNote} maxLength={LIMITS.note}>
          <Label className="field__label">Note, shown beside the name</Label>
          <TextArea className="input" rows={3} dir="auto" />
        </TextField>
        <div className="field">
          <span className="field__label">People on this board begin in</span>
          <Choices label="People on this board begin in" choices={UNITS} chosen={units} onChoose={setUnits} />
        </div>
        <div className="row">
          <Button type="submit" className="button button--main">
            Keep it
          </Button>
          <Button className="button" onPress={onClose}>
            Leave it
          </Button>
        </div>
      </Form>
    </Sheet>
  );
}
