import { memo, type ReactNode } from 'react';
import { saysTheSame } from '../reading/steady.ts';
import type { LoopView } from './round-view.ts';

interface BaseBeadProps extends Pick<LoopView, 'loop' | 'name' | 'par' | 'base' | 'holes' | 'length' | 'walks'> {
  readonly unit: string;
  readonly open: boolean;
  readonly onToggle: (loop: string) => void;
  /** What can be done with the loop. */
  readonly menu?: ReactNode;
}

/** The base a loop leaves from, with the loop's name and par; opens and folds the loop, and tells its totals folded. */
export const BaseBead = memo(function BaseBead(props: BaseBeadProps) {
  const { loop, name, par, base, open, onToggle, menu } = props;
  return (
    <li className="base" data-slot="base" data-loop={loop} title={base ? `from ${base}` : undefined}>
      <h3 className="base__heading">
        <button type="button" className="base__button" aria-expanded={open} onClick={() => onToggle(loop)}>
          <svg className="base__house" viewBox="0 0 16 16" aria-hidden="true">
            <path d="M1 7.5 8 2l7 5.5V14H1Z" />
          </svg>
          <span className="base__name">
            <bdi>{name}</bdi> <span className="soft">· {par}</span>
          </span>
          <span className="base__fold" aria-hidden="true">
            {open ? '▾' : '▸'}
          </span>
        </button>
      </h3>
      <span className="bead__menu">{menu}</span>
      {!open && (
        <p className="base__totals small soft">
          {props.holes}, {props.length} {props.unit}; walks {props.walks}
        </p>
      )}
    </li>
  );
}, saysTheSame);
