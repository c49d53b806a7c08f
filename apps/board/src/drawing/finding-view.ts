import type { Analysis, Finding, Severity } from '@loopwright/analysis';
import { pointAlong, polylineLength } from '@loopwright/geometry';
import type { FindingKey, HoleId, SitePoint } from '@loopwright/model';
import { toSheetLine } from './site-transform.ts';

/** A finding at its place: a sign in shape and colour, and the stretch it is about. */
export interface FindingView {
  readonly key: FindingKey;
  readonly severity: Severity;
  readonly at: SitePoint;
  /** Between the two nearest places, or along the stretch concerned. */
  readonly line?: readonly number[];
  readonly holes: readonly HoleId[];
}

/** `undefined` for a finding of the round as a whole: it has no place on the drawing. */
export function toFindingView(finding: Finding): FindingView | undefined {
  const { key, severity, holes, place } = finding;
  if (place.type === 'point') return { key, severity, holes, at: place.at };
  if (place.type === 'line' && place.points.length > 0) {
    const middle = pointAlong(place.points, polylineLength(place.points) / 2);
    return { key, severity, holes, at: middle, line: toSheetLine(place.points) };
  }
  return undefined;
}

const ORDER: Readonly<Record<Severity, number>> = { mention: 0, look: 1, stop: 2 };

/**
 * A maker of the findings that have a place, mildest first, so that the worst are drawn on top.
 * A finding that stays keeps its view.
 */
export function openFindingViews(): (analysis: Analysis) => readonly FindingView[] {
  let kept = new Map<Finding, FindingView | undefined>();
  return (analysis) => {
    const now: typeof kept = new Map();
    for (const finding of analysis.findings) {
      now.set(finding, kept.has(finding) ? kept.get(finding) : toFindingView(finding));
    }
    kept = now;
    return [...now.values()].flatMap((view) => view ?? []).sort((a, b) => ORDER[a.severity] - ORDER[b.severity]);
  };
}
