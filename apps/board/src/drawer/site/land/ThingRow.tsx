import { memo, type ReactNode, type RefObject, useEffect, useRef } from 'react';
import { saysTheSame } from '../../../reading/steady.ts';
import { useArrival } from '../../use-arrival.ts';

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
  const button = useRef<HTMLButtonElement>(null);
  const { chosen } = row;
  useEffect(() => {
    if (chosen) item.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  useArrival(button, chosen);
  return (
    <li ref={item} className={`thing${chosen ? ' thing--chosen' : ''}`}>
      <ThingButton {...row} button={button} />
      {chosen && <div className="thing__fields">{children}</div>}
    </li>
  );
}

interface ThingButtonProps extends ThingRowProps {
  readonly button: RefObject<HTMLButtonElement | null>;
}

const ThingButton = memo(function ThingButton({ id, title, what, chosen, onChoose, button }: ThingButtonProps) {
  return (
    <button ref={button} type="button" className="thing__button" aria-expanded={chosen} onClick={() => onChoose(id)}>
      <span className="thing__title">
        <bdi>{title}</bdi>
      </span>
      <span className="thing__what small soft">{what}</span>
    </button>
  );
}, saysTheSame);
