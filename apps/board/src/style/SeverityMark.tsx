import type { Severity } from '@loopwright/analysis';

const SHAPES = { stop: '◆', look: '▲', mention: '●', better: '✓' } as const;

interface SeverityMarkProps {
  readonly severity: Severity | 'better';
  /** What is heard instead of the shape; the word of the severity where nothing else says it. */
  readonly words: string;
}

/** Shape and colour and word, never colour alone. */
export function SeverityMark({ severity, words }: SeverityMarkProps) {
  return (
    <span className={`severity severity--${severity}`}>
      <span aria-hidden="true">{SHAPES[severity]}</span>
      {words && <span className="only-heard">{words}</span>}
    </span>
  );
}
