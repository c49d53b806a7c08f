import { memo } from 'react';
import { saysTheSame } from '../reading/steady.ts';

interface BaseBeadProps {
  readonly loop: string;
  readonly name: string;
  readonly par: string;
  readonly base: string;
  readonly open: boolean;
  readonly onToggle: (loop: string) => void;
}

/** The base a loop leaves from, with the loop's name and par; opens and closes the loop. */
export const BaseBead = memo(function BaseBead({ loop, name, par, base, open, onToggle }: BaseBeadProps) {
  return (
    <li className="base" data-slot="base" data-loop={loop} title={base ? `from ${base}` : undefined}>
      <h3 className="base__heading">
        <button type="button" className="base__button" aria-expanded={open} onClick={() => onToggle(loop)}>
          <svg className="base__house" viewBox="0 0 16 16" aria-hidden="true">
            <path d="M1 7.5 8 2l7 5.5V14H1Z" />
          </svg>
          <span className="base__name">
            {name} <span className="soft">· {par}</span>
          </span>
          <span className="base__fold" aria-hidden="true">
            {open ? '▾' : '▸'}
          </span>
        </button>
      </h3>
    </li>
  );
}, saysTheSame);
