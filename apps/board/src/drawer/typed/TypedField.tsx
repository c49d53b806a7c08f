import './typed.css';
import type { NamedEdit } from '@loopwright/document';
import { type KeyboardEvent, useId, useState } from 'react';
import type { DoEdit } from '../../board/parts.ts';
import type { TypedAnswer } from './typed-answer.ts';

interface TypedFieldProps {
  /** Its full name for those who listen; shown above it only where `caption` is given. */
  readonly label: string;
  readonly caption?: string;
  /** What is shown while nobody types. */
  readonly shown: string;
  readonly unit?: string;
  readonly disabled?: boolean;
  readonly hint?: string;
  readonly answer: (typed: string) => TypedAnswer;
  /** What an arrow up (1) or down (−1) does, a metre a press. */
  readonly step?: (by: 1 | -1) => NamedEdit;
  readonly edit: DoEdit;
}

/**
 * A figure that is changed by typing: Enter or leaving the field takes it, Esc leaves it as it was. What cannot be
 * read leaves the old figure and says why.
 */
export function TypedField({
  label,
  caption,
  shown,
  unit,
  disabled = false,
  hint,
  answer,
  step,
  edit,
}: TypedFieldProps) {
  const [typed, setTyped] = useState<string>();
  const [wrong, setWrong] = useState('');
  const id = useId();
  const take = () => {
    if (typed === undefined) return;
    const result = answer(typed);
    setTyped(undefined);
    setWrong(result.kind === 'wrong' ? `${result.why} It stays as it was.` : '');
    if (result.kind === 'edit') edit(result.edit);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') take();
    if (step && typed === undefined && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
      event.preventDefault();
      edit(step(event.key === 'ArrowUp' ? 1 : -1));
    }
    if (event.key !== 'Escape' || typed === undefined) return;
    // Esc here is the field's own: it does not put the selection away.
    event.stopPropagation();
    setTyped(undefined);
    setWrong('');
  };
  const said = wrong || hint;
  return (
    <div className="field typed">
      {caption && (
        <label className="field__label" htmlFor={id}>
          {caption}
        </label>
      )}
      <span className="typed__figure">
        <input
          id={id}
          className="input input--figure"
          aria-label={caption ? undefined : label}
          aria-describedby={said ? `${id}-said` : undefined}
          aria-invalid={wrong !== ''}
          inputMode="text"
          autoComplete="off"
          disabled={disabled}
          value={typed ?? shown}
          onFocus={(event) => event.target.select()}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={take}
          onKeyDown={onKeyDown}
        />
        {unit && <span className="typed__unit">{unit}</span>}
      </span>
      {said && (
        <span
          id={`${id}-said`}
          className={wrong ? 'small typed__wrong' : 'small soft'}
          role={wrong ? 'alert' : undefined}
        >
          {said}
        </span>
      )}
    </div>
  );
}
