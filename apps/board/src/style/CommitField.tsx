import { type KeyboardEvent, memo, useId, useState } from 'react';

interface CommitFieldProps {
  readonly label: string;
  readonly value: string;
  /** Takes what was typed; answers what is wrong with it, or nothing when it was taken. */
  readonly onCommit: (typed: string) => string | undefined;
  readonly className?: string;
  readonly maxLength?: number;
  readonly disabled?: boolean;
  readonly placeholder?: string;
  /** After Enter took the value; before it, where the arrow keys lead. */
  readonly onLeave?: (field: HTMLElement, step: 1 | -1) => void;
}

/**
 * A value changed in place: Enter or leaving takes it, Esc puts it back; a wrong one says why and stays to be mended.
 */
export const CommitField = memo(function CommitField(props: CommitFieldProps) {
  const { label, value, onCommit, className = '', maxLength, disabled = false, placeholder, onLeave } = props;
  const [typed, setTyped] = useState<string>();
  const [wrong, setWrong] = useState('');
  const why = useId();
  const reset = () => {
    setTyped(undefined);
    setWrong('');
  };
  const commit = (): boolean => {
    const answer = typed === undefined || typed === value ? undefined : onCommit(typed);
    if (answer === undefined) reset();
    else setWrong(answer);
    return answer === undefined;
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    const field = event.currentTarget;
    if (event.key === 'Escape' && typed !== undefined) {
      event.stopPropagation();
      reset();
    } else if (event.key === 'Enter') {
      event.preventDefault();
      if (commit()) onLeave?.(field, event.shiftKey ? -1 : 1);
    } else if (onLeave && (event.key === 'ArrowDown' || event.key === 'ArrowUp') && commit()) {
      event.preventDefault();
      onLeave(field, event.key === 'ArrowDown' ? 1 : -1);
    }
  };
  return (
    <span className="commit">
      <input
        className={`input commit__input ${className}`}
        aria-label={label}
        aria-invalid={wrong !== ''}
        aria-describedby={wrong ? why : undefined}
        dir="auto"
        value={typed ?? value}
        title={typed === undefined ? value || undefined : undefined}
        maxLength={maxLength}
        disabled={disabled}
        placeholder={placeholder}
        onChange={(event) => setTyped(event.target.value)}
        onFocus={(event) => event.target.select()}
        onBlur={commit}
        onKeyDown={onKeyDown}
      />
      {wrong && (
        <span id={why} role="alert" className="commit__wrong small">
          {wrong}
        </span>
      )}
    </span>
  );
});
