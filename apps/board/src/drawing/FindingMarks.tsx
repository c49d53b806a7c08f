import type { FindingKey, SitePoint } from '@loopwright/model';
import { memo } from 'react';
import type { FindingView } from './finding-view.ts';
import { Painted } from './Painted.tsx';
import { paintFinding } from './paint-finding.ts';

interface FindingMarksProps {
  /** The worst last. */
  readonly findings: readonly FindingView[];
  /** Where each sign stands, clear of hole numbers, tees and greens; a line leads from there to its place. */
  readonly places: ReadonlyMap<FindingKey, SitePoint>;
  readonly selected: FindingKey | undefined;
  readonly scale: number;
}

/** Findings at their places, painted as one shape: they are drawn in every picture of a drag, and may be many. */
export const FindingMarks = memo(function FindingMarks({ findings, places, selected, scale }: FindingMarksProps) {
  return (
    <Painted
      paint={(canvas) => {
        for (const finding of findings) {
          const state = finding.key === selected ? 'selected' : 'plain';
          paintFinding(canvas, finding, places.get(finding.key) ?? finding.at, scale, state);
        }
      }}
    />
  );
});
