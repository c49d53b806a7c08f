import { type KeyboardEvent, useId, useState } from 'react';

interface TextLineProps {
  readonly label: string;
  readonly text: string;
  readonly most: number;
  readonly lines: 'one' | 'several';
  readonly disabled: boolean;
  readonly onText: (text: string) => void;
}

/** Words that are changed in place: leaving the field takes them, Enter too where they are one line, Esc leaves them. */
export function TextLine({ label, text, most, lines, disabled, onText }: TextLineProps) {
  const [typed, setTyped] = useState<string>();
  const id = useId();
  const take = () => {
    if (typed !== undefined && typed !== text) onText(typed);
    setTyped(undefined);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' && lines === 'one') take();
    if (event.key !== 'Escape' || typed === undefined) return;
    event.stopPropagation();
    setTyped(undefined);
  };
  const field = {
    id,
    className: 'input',
    value: typed ?? text,
    maxLength: most,
    disabled,
    onBlur: take,
    onKeyDown,
  } as const;
  return (
    <div className="field">
      <label className="field__label" htmlFor={id}>
        {label}
      </label>
      {lines === 'one' ? (
        <input {...field} onChange={(event) => setTyped(event.target.value)} />
      ) : (
        <textarea {...field} rows={2} onChange={(event) => setTyped(event.target.value)} />
      )}
    </div>
  );
}
