import type { Analysis } from '../figures.ts';
import { figureChanges } from './figure-changes.ts';
import { findingChanges } from './finding-changes.ts';
import type { FigureChange, FindingChange, Ripple } from './ripple.ts';

/**
 * What a change did: every figure and finding that differs between two states of one routing.
 *
 * Changes too small to show on a card are left out. The worst gain is the worst finding that came or worsened, else
 * the walk that grew most; the worst loss the gravest finding that went or eased, else the walk that shrank most.
 * Cost: holes and findings that kept their object are passed over.
 */
export function compareAnalyses(before: Analysis, after: Analysis): Ripple {
  return withWorst(figureChanges(before, after), findingChanges(before, after));
}

/** A ripple of these changes, the worst of them named. Findings come worst first. */
export function withWorst(figures: readonly FigureChange[], findings: readonly FindingChange[]): Ripple {
  const worstGain = findings.find(isGain) ?? largest(figures, false);
  const worstLoss = findings.find(isLoss) ?? largest(figures, true);
  return { figures, findings, ...(worstGain && { worstGain }), ...(worstLoss && { worstLoss }) };
}

export function isGain({ change }: FindingChange): boolean {
  return change === 'gained' || change === 'worsened';
}

export function isLoss(change: FindingChange): boolean {
  return !isGain(change);
}

/** The largest change for the better or the worse, of single walks before totals: those follow from them. */
function largest(figures: readonly FigureChange[], better: boolean): FigureChange | undefined {
  let most: FigureChange | undefined;
  for (const figure of figures) {
    if (figure.better !== better || figure.of.kind !== 'walk') continue;
    if (!most || Math.abs(figure.after - figure.before) > Math.abs(most.after - most.before)) most = figure;
  }
  return most;
}
