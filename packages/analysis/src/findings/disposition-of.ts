import type { Disposition, RoutingId } from '@loopwright/model';
import type { Finding } from '../figures.ts';

/** A disposition holds until the measure is worse than it was by more than both of these. */
const METRES_WORSE = 3;
const SHARE_WORSE = 0.05;

/** `reopened`: it was decided, but the measure has since become worse. */
export type DispositionState =
  | { readonly state: 'open'; readonly disposition?: undefined }
  | { readonly state: 'decided' | 'reopened'; readonly disposition: Disposition };

/**
 * What was decided about a finding, and whether that still holds: it reopens when the measured value worsens by more
 * than 3 m and 5 %. What is not measured in metres reopens beyond 5 %.
 */
export function dispositionOf(
  finding: Finding,
  dispositions: readonly Disposition[],
  routing: RoutingId,
): DispositionState {
  const disposition = dispositions.find((other) => other.routing === routing && other.finding === finding.key);
  if (!disposition) return { state: 'open' };
  return { state: hasWorsened(finding, disposition.measured) ? 'reopened' : 'decided', disposition };
}

function hasWorsened({ measured, worse, unit }: Finding, decidedAt: number): boolean {
  const by = worse === 'less' ? decidedAt - measured : measured - decidedAt;
  const least = unit === 'm' ? METRES_WORSE : 0;
  return by > least && by > SHARE_WORSE * Math.abs(decidedAt);
}
