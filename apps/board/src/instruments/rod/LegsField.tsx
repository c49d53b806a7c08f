import type { LengthUnit } from '@loopwright/model';
import { useState } from 'react';
import { FieldError, Input, Label, TextField } from 'react-aria-components';
import { unitSymbol } from '../../reading/lengths.ts';
import { legsField, parseLegs } from './rod-legs.ts';

interface LegsFieldProps {
  /** Metres, from the tee. */
  readonly legs: readonly number[];
  readonly units: LengthUnit;
  readonly onLegs: (legs: readonly number[]) => void;
}

/** The legs of the rod, typed with a plus between them; taken when the field is left or Enter is pressed. */
export function LegsField({ legs, units, onLegs }: LegsFieldProps) {
  const [typed, setTyped] = useState<string>();
  const shown = typed ?? legsField(legs, units);
  const read = typed === undefined ? undefined : parseLegs(typed, units);
  const take = () => {
    // Left as it was: what is shown is rounded, and must not round the rod.
    if (read?.kind === 'legs' && typed !== legsField(legs, units)) onLegs(read.legs);
    if (read?.kind !== 'wrong') setTyped(undefined);
  };
  return (
    <TextField
      className="strip__field"
      value={shown}
      maxLength={40}
      isInvalid={read?.kind === 'wrong'}
      onChange={setTyped}
      onBlur={take}
      onKeyDown={(event) => {
        if (event.key === 'Enter') take();
        if (event.key === 'Escape') setTyped(undefined);
      }}
    >
      <Label>Legs, {unitSymbol(units)}</Label>
      <Input className="input rod__legs" inputMode="text" />
      <FieldError className="strip__wrong">{read?.kind === 'wrong' ? read.why : ''}</FieldError>
    </TextField>
  );
}
