import type { RoundFigures } from '@loopwright/analysis';
import type { LengthUnit } from '@loopwright/model';
import { useMemo } from 'react';
import { toPetals } from './rose-view.ts';

interface RosePanelProps {
  readonly round: RoundFigures;
  readonly units: LengthUnit;
}

/** The rose of playing directions, north of the plan up; the same figures are listed for those who cannot see it. */
export function RosePanel({ round, units }: RosePanelProps) {
  const petals = useMemo(() => toPetals(round.rose, units), [round.rose, units]);
  return (
    <figure className="rose">
      <figcaption className="rose__title">Directions of play</figcaption>
      <svg className="rose__picture" viewBox="-1.35 -1.35 2.7 2.7" aria-hidden="true">
        <circle className="rose__ring" r="1" />
        <circle className="rose__ring" r="0.7071" />
        {petals.map(({ key, path }) => (
          <path key={key} className="rose__petal" d={path} />
        ))}
        {petals.map(({ key, letters, labelAt }) => (
          <text key={key} className="rose__label" {...labelAt}>
            {letters}
          </text>
        ))}
      </svg>
      <ul className="rose__list">
        {petals.map(({ key, letters, holes, length, said }) => (
          <li key={key} className="rose__row">
            <span aria-hidden="true">{letters}</span>
            <span aria-hidden="true">{holes}</span>
            <span aria-hidden="true">{length}</span>
            <span className="only-heard">{said}</span>
          </li>
        ))}
      </ul>
    </figure>
  );
}
