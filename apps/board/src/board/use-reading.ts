import type { TeeSet } from '@loopwright/model';
import { useCallback, useState } from 'react';
import { readKept, writeKept } from '../live/kept.ts';
import type { Reading } from './parts.ts';

/** How this person reads boards, kept on this machine: units for all boards, the tee set while the board has it. */
export function useReading(teeSets: readonly TeeSet[]): readonly [Reading, (reading: Reading) => void] {
  const [units, setUnits] = useState(readKept('units') === 'metres' ? ('metres' as const) : ('yards' as const));
  const [chosen, setChosen] = useState(readKept('tee set') ?? '');
  const set = teeSets.find(({ id }) => id === chosen) ?? teeSets[0];
  const teeSet = set?.id ?? '';
  const [reading, setReading] = useState<Reading>({ units, teeSet });
  const now = reading.units === units && reading.teeSet === teeSet ? reading : { units, teeSet };
  if (now !== reading) setReading(now);
  const read = useCallback((next: Reading) => {
    setUnits(next.units);
    setChosen(next.teeSet);
    writeKept('units', next.units);
    writeKept('tee set', next.teeSet);
  }, []);
  return [now, read];
}
