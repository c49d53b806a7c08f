import type { LengthUnit } from '@loopwright/model';
import { useState } from 'react';
import { Button, DialogTrigger, Input, Label, Popover, TextField } from 'react-aria-components';
import { legSum } from '../../reading/sketch-words.ts';
import { type KeptRod, readRods, withRod, writeRods } from './kept-rods.ts';

interface RodShelfProps {
  /** Of the rod in the hand: metres, from the tee. */
  readonly legs: readonly number[];
  readonly units: LengthUnit;
  readonly onLegs: (legs: readonly number[]) => void;
}

/** Rods kept on this machine under a name: take one, keep the one in the hand, throw one away. */
export function RodShelf({ legs, units, onLegs }: RodShelfProps) {
  const [rods, setRods] = useState(readRods);
  const [name, setName] = useState('');
  const [said, setSaid] = useState('');
  const keep = (next: readonly KeptRod[], words: string) => {
    setRods(next);
    setSaid(writeRods(next) === 'kept' ? words : 'This browser keeps nothing: the rods stay for this visit only.');
  };
  return (
    <DialogTrigger>
      <Button className="button button--small">Rods …</Button>
      <Popover className="popover" aria-label="Rods kept on this machine">
        <div className="popover__inside rod-shelf">
          {rods.length === 0 && <p className="small soft">None kept yet: name the rod in your hand.</p>}
          <ul className="rod-shelf__rods">
            {rods.map((rod) => (
              <li key={rod.name} className="rod-shelf__rod">
                <Button className="button button--small" onPress={() => onLegs(rod.legs)}>
                  {rod.name}: {legSum(rod.legs, units)}
                </Button>
                <Button
                  className="button button--small button--quiet"
                  aria-label={`Remove the rod ${rod.name}`}
                  onPress={() =>
                    keep(
                      rods.filter((each) => each !== rod),
                      `${rod.name} thrown away.`,
                    )
                  }
                >
                  ×
                </Button>
              </li>
            ))}
          </ul>
          <TextField className="field" value={name} onChange={setName} maxLength={40}>
            <Label className="field__label">Name for {legSum(legs, units)}</Label>
            <Input className="input" />
          </TextField>
          <Button
            className="button button--small"
            isDisabled={name.trim() === ''}
            onPress={() => keep(withRod(rods, { name, legs }), `${name.trim()} kept.`)}
          >
            Keep this rod
          </Button>
          <p role="status" className="small soft">
            {said}
          </p>
        </div>
      </Popover>
    </DialogTrigger>
  );
}
