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

/** The findings that have a place, mildest first, so that the worst are drawn on top. */
export function findingViews(analysis: Analysis): readonly FindingView[] {
  return analysis.findings
    .flatMap((finding) => toFindingView(finding) ?? [])
    .sort((a, b) => ORDER[a.severity] - ORDER[b.severity]);
}
