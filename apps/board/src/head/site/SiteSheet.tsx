import { type LengthUnit, LIMITS } from '@loopwright/model';
import { useState } from 'react';
import { Label, TextArea, TextField } from 'react-aria-components';
import type { DoEdit } from '../../board/parts.ts';
import { Choices } from '../../style/Choices.tsx';
import { NameSheet } from '../../style/NameSheet.tsx';
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
  const [note, setNote] = useState(site.note);
  const [units, setUnits] = useState(site.units);
  const keep = (name: string) => {
    const step = siteEdit(site, { name, note, units });
    if (step) edit(step);
  };
  return (
    <NameSheet title="The site" label="Name" name={site.name} does="Keep it" onName={keep} onClose={onClose}>
      <TextField className="field" value={note} onChange={setNote} maxLength={LIMITS.note}>
        <Label className="field__label">Note, shown with the name</Label>
        <TextArea className="input" rows={3} dir="auto" />
      </TextField>
      <div className="field">
        <span className="field__label">People on this board begin in</span>
        <Choices label="People on this board begin in" choices={UNITS} chosen={units} onChoose={setUnits} />
      </div>
    </NameSheet>
  );
}
