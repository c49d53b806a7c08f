import { memo } from 'react';
import { saysTheSame } from '../../../reading/steady.ts';
import type { ParBars } from './length-bars.ts';

interface LengthBarsProps {
  readonly pars: readonly ParBars[];
  readonly unit: string;
}

/** Lengths by par, the longest first: who is short or long among its like, and by how much. */
export function LengthBars({ pars, unit }: LengthBarsProps) {
  return (
    <section className="bars" aria-label="Lengths by par">
      <h3 className="bars__title">Lengths by par, {unit}</h3>
      {pars.map((bars) => (
        <ParGroup key={bars.par} bars={bars} unit={unit} />
      ))}
    </section>
  );
}

const ParGroup = memo(function ParGroup({ bars: { par, mean, meanShare, bars }, unit }: GroupProps) {
  return (
    <div className="bars__group" style={{ '--mean': String(meanShare) }}>
      <h4 className="bars__heading">
        Par {par}{' '}
        <span className="soft">
          mean {mean} {unit}
        </span>
      </h4>
      <ol className="bars__list">
        {bars.map(({ hole, number, figure, share }) => (
          <li key={hole} className="bars__row">
            <span className="bars__number">
              <span className="only-heard">Hole </span>
              {number}
            </span>
            <span className="bars__track" aria-hidden="true">
              <span className="bars__bar" style={{ width: `${share * 100}%` }} />
            </span>
            <span className="bars__figure">{figure}</span>
          </li>
        ))}
      </ol>
    </div>
  );
}, sameBars);

interface GroupProps {
  readonly bars: ParBars;
  readonly unit: string;
}

function sameBars(before: GroupProps, after: GroupProps): boolean {
  const { bars: one, ...first } = before.bars;
  const { bars: other, ...second } = after.bars;
  return before.unit === after.unit && saysTheSame(first, second) && saysTheSame(one, other);
}
