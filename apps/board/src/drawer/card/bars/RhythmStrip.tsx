import { memo } from 'react';
import { saysTheSame } from '../../../reading/steady.ts';
import { WideTable } from '../../../style/WideTable.tsx';
import type { StripHole } from './rhythm-strip.ts';

const BEND_MARKS = { left: '↰', right: '↱', straight: '│', unknown: '–' } as const;

interface RhythmStripProps {
  readonly holes: readonly StripHole[];
  readonly unit: string;
}

/** The round as it is played, a column a hole: length as a bar, par, bend and the club into the green. */
export function RhythmStrip({ holes, unit }: RhythmStripProps) {
  return (
    <WideTable label="The round as it is played">
      <table className="rhythm">
        <caption className="bars__title">The round as it is played</caption>
        <thead>
          <Row name="hole" holes={holes} cell="number" />
        </thead>
        <tbody>
          <tr>
            <th scope="row">{unit}</th>
            {holes.map((hole) => (
              <Length key={hole.hole} share={hole.share} length={hole.length} startsLoop={hole.startsLoop} />
            ))}
          </tr>
          <Row name="par" holes={holes} cell="par" />
          <Row name="bend" holes={holes} cell="bend" />
          <Row name="into" holes={holes} cell="clubShort" />
        </tbody>
      </table>
    </WideTable>
  );
}

interface RowProps {
  readonly name: string;
  readonly holes: readonly StripHole[];
  readonly cell: 'number' | 'par' | 'bend' | 'clubShort';
}

function Row({ name, holes, cell }: RowProps) {
  return (
    <tr>
      <th scope="row">{name}</th>
      {holes.map((hole) => (
        <Cell key={hole.hole} cell={cell} value={hole[cell]} said={hole.club} startsLoop={hole.startsLoop} />
      ))}
    </tr>
  );
}

interface CellProps {
  readonly cell: RowProps['cell'];
  readonly value: string;
  /** The club in full. */
  readonly said: string;
  readonly startsLoop: boolean;
}

const Cell = memo(function Cell({ cell, value, said, startsLoop }: CellProps) {
  const className = startsLoop ? 'rhythm__loop' : undefined;
  if (cell === 'number') {
    return (
      <th scope="col" className={className}>
        {value}
      </th>
    );
  }
  const full = cell === 'clubShort' ? said : cell === 'bend' ? value : '';
  if (full === '') return <td className={className}>{value}</td>;
  return (
    <td className={className} title={full}>
      <span aria-hidden="true">{cell === 'bend' ? markOf(value) : value}</span>
      <span className="only-heard">{full}</span>
    </td>
  );
}, saysTheSame);

const isBend = (bend: string): bend is keyof typeof BEND_MARKS => bend in BEND_MARKS;

const markOf = (bend: string) => (isBend(bend) ? BEND_MARKS[bend] : bend);

type LengthProps = Pick<StripHole, 'share' | 'length' | 'startsLoop'>;

const Length = memo(function Length({ share, length, startsLoop }: LengthProps) {
  return (
    <td className={`rhythm__length${startsLoop ? ' rhythm__loop' : ''}`} title={length}>
      <span className="rhythm__bar" style={{ height: `${share * 100}%` }} aria-hidden="true" />
      <span className="rhythm__figure">{length}</span>
    </td>
  );
}, saysTheSame);
