import { memo } from 'react';
import { saysTheSame } from '../reading/steady.ts';
import { LoopMenu, type LoopMenuProps } from './LoopMenu.tsx';
import type { LoopView } from './round-view.ts';

const NONE = [] as const;

interface BaseBeadProps extends Pick<LoopView, 'loop' | 'name' | 'par' | 'base'> {
  readonly open: boolean;
  readonly onToggle: (loop: string) => void;
  /** Holes, length and walks in words, where the loop is folded. */
  readonly totals?: string;
  /** After which hole the loop can be split, and what it can be joined with: for its menu. */
  readonly splits?: LoopMenuProps['splits'];
  readonly next?: string;
  /** Absent where nothing can be done with the loop. */
  readonly onChoose?: LoopMenuProps['onChoose'];
}

/** The base a loop leaves from, with the loop's name and par; opens and folds the loop, and tells its totals folded. */
export const BaseBead = memo(function BaseBead(props: BaseBeadProps) {
  const { loop, name, par, base, open, onToggle, totals, splits = NONE, next = '', onChoose } = props;
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
      <span className="bead__menu">
        {onChoose && <LoopMenu loop={loop} name={name} splits={splits} next={next} onChoose={onChoose} />}
      </span>
      {totals !== undefined && <p className="base__totals small soft">{totals}</p>}
    </li>
  );
}, saysTheSame);
