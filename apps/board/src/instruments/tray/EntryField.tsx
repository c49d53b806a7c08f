import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import type { Running } from '../instrument.ts';
import type { InstrumentHand } from '../instrument-hand.ts';

interface EntryFieldProps {
  readonly hand: InstrumentHand;
  readonly running: Running;
  /** What may be typed now. */
  readonly asked: string;
}

/** The field for typed lengths, bearings and places. Enter takes it in and gives the drawing the keyboard again. */
export function EntryField({ hand, running, asked }: EntryFieldProps) {
  const field = useRef<HTMLInputElement>(null);
  const [wrong, setWrong] = useState<string>();
  const id = useId();
  useEffect(() => hand.lendEntry(() => field.current?.focus()), [hand]);
  const leave = () => {
    if (field.current) field.current.value = '';
    setWrong(undefined);
    hand.drawing()?.focus();
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Escape') {
      running.typing?.('');
      leave();
    }
    if (event.key !== 'Enter') return;
    event.preventDefault();
    const typed = event.currentTarget.value.trim();
    const why = typed === '' ? undefined : running.enter?.(typed);
    if (typed === '') running.finish?.();
    if (why === undefined) hand.goOnFrom(running.lastPoint?.());
    if (why === undefined) leave();
    else setWrong(why);
  };
  return (
    <div className="strip__entry">
      <label htmlFor={id}>{asked}</label>
      <input
        ref={field}
        id={id}
        className="input input--figure"
        autoComplete="off"
        spellCheck={false}
        enterKeyHint="done"
        maxLength={40}
        aria-invalid={wrong !== undefined}
        {...(wrong === undefined ? {} : { 'aria-describedby': `${id}-wrong` })}
        onKeyDown={onKeyDown}
        onChange={({ currentTarget }) => {
          setWrong(undefined);
          running.typing?.(currentTarget.value.trim());
        }}
      />
      {wrong !== undefined && (
        <p id={`${id}-wrong`} className="strip__wrong" role="alert">
          {wrong}
        </p>
      )}
    </div>
  );
}
