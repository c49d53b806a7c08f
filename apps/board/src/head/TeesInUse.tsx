import { memo } from 'react';
import type { HeadProps } from '../board/parts.ts';

type TeesInUseProps = Pick<HeadProps, 'teeSets' | 'reading' | 'onReading'>;

/** Which tees this person reads lengths and walks from. */
export const TeesInUse = memo(function TeesInUse({ teeSets, reading, onReading }: TeesInUseProps) {
  return (
    <select
      className="input head__tees"
      aria-label="Tees in use"
      value={reading.teeSet}
      onChange={(event) => onReading({ ...reading, teeSet: event.target.value })}
    >
      {teeSets.map(({ id, name }) => (
        <option key={id} value={id}>
          {/tees?$/i.test(name) ? name : `${name} tees`}
        </option>
      ))}
    </select>
  );
});
