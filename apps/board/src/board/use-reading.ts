import type { LengthUnit, TeeSet } from '@loopwright/model';
import { useState } from 'react';
import { readKept, writeKept } from '../live/kept.ts';
import { useSteady } from '../reading/use-steady.ts';
import type { Reading } from './parts.ts';

/**
 * How this person reads boards, kept on this machine: units for all boards, the tee set while the board has it.
 * Until they have chosen, in the units the board begins with.
 */
export function useReading(
  teeSets: readonly TeeSet[],
  begun: LengthUnit = 'yards',
): readonly [Reading, (reading: Reading) => void] {
  const [own, setUnits] = useState(keptUnits);
  const units = own ?? begun;
  const [chosen, setChosen] = useState(() => readKept('tee set') ?? '');
  const set = teeSets.find(({ id }) => id === chosen) ?? teeSets[0];
  const teeSet = set?.id ?? '';
  const [reading, setReading] = useState<Reading>({ units, teeSet });
  const now = reading.units === units && reading.teeSet === teeSet ? reading : { units, teeSet };
  if (now !== reading) setReading(now);
  const read = useSteady((next: Reading) => {
    setChosen(next.teeSet);
    writeKept('tee set', next.teeSet);
    if (next.units === units) return;
    setUnits(next.units);
    writeKept('units', next.units);
  });
  return [now, read];
}

function keptUnits(): LengthUnit | undefined {
  const kept = readKept('units');
  return kept === 'metres' || kept === 'yards' ? kept : undefined;
}
