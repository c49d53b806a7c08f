import type { Verdict } from '@loopwright/model';
import { VERDICTS } from './hole-choices.ts';

interface VerdictSelectProps {
  /** Of a label beside it. */
  readonly id?: string;
  readonly number: string;
  readonly verdict: Verdict;
  readonly disabled: boolean;
  readonly className: string;
  readonly onVerdict: (verdict: Verdict) => void;
}

/** The designer's view of a hole, chosen from the four there are. */
export function VerdictSelect({ id, number, verdict, disabled, className, onVerdict }: VerdictSelectProps) {
  return (
    <select
      id={id}
      className={className}
      aria-label={`Verdict on hole ${number}`}
      value={verdict}
      disabled={disabled}
      onChange={(event) => {
        const chosen = VERDICTS.find((each) => each === event.target.value);
        if (chosen) onVerdict(chosen);
      }}
    >
      {VERDICTS.map((each) => (
        <option key={each}>{each}</option>
      ))}
    </select>
  );
}
