import type { Round, RoundId } from '@loopwright/model';
import { memo } from 'react';
import { saysTheSame } from '../reading/steady.ts';
import { Marks } from './Marks.tsx';

interface RoundHeadProps {
  readonly rounds: readonly Round[];
  readonly shown: RoundId | undefined;
  readonly totals: string;
  readonly unit: string;
  readonly onShow: (round: RoundId | undefined) => void;
}

/** The round's title, its par and length; where there are several rounds, which of them the string shows. */
export const RoundHead = memo(function RoundHead({ rounds, shown, totals, unit, onShow }: RoundHeadProps) {
  return (
    <div className="round__head">
      <h2 id="round-title" className="round__title">
        The round
      </h2>
      {totals && (
        <span className="round__unit">
          {totals} {unit}
        </span>
      )}
      <Marks />
      {rounds.length > 1 && (
        <select
          className="input round__choice"
          aria-label="Round shown"
          value={shown ?? ''}
          onChange={(event) => onShow(event.target.value || undefined)}
        >
          <option value="">all loops</option>
          {rounds.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      )}
    </div>
  );
}, saysTheSame);
