import { memo, type ReactNode, useEffect, useRef } from 'react';
import { saysTheSame } from '../../../reading/steady.ts';

interface ThingRowProps {
  readonly id: string;
  readonly title: string;
  /** Said beside the title. */
  readonly what: string;
  readonly chosen: boolean;
  readonly onChoose: (id: string) => void;
}

/** One thing of a list: a press picks it out on the drawing and opens what can be changed about it. */
export function ThingRow({ children, ...row }: ThingRowProps & { readonly children?: ReactNode }) {
  const item = useRef<HTMLLIElement>(null);
  const { chosen } = row;
  useEffect(() => {
    if (chosen) item.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  return (
    <li ref={item} className={`thing${chosen ? ' thing--chosen' : ''}`}>
      <ThingButton {...row} />
      {chosen && <div className="thing__fields">{children}</div>}
    </li>
  );
}

const ThingButton = memo(function ThingButton({ id, title, what, chosen, onChoose }: ThingRowProps) {
  return (
    <button type="button" className="thing__button" aria-expanded={chosen} onClick={() => onChoose(id)}>
      <span className="thing__title">
        <bdi>{title}</bdi>
      </span>
      <span className="thing__what small soft">{what}</span>
    </button>
  );
}, saysTheSame);
