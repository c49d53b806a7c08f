import { SEVERITY_RANK } from '../findings/one-alarm.ts';
import { isGain, isLoss, withWorst } from './compare-analyses.ts';
import { aboutFinding } from './finding-changes.ts';
import type { FigureChange, FindingChange, Ripple } from './ripple.ts';

/** While a drag goes on, a change joins the list once it is this large, metres. */
const DEAD_BAND = 2;

/**
 * The ripple of a drag in progress, kept from flickering: a figure, or a finding that eases or worsens, joins the
 * list once it changed by 2 m and stays until nothing of it shows; what is listed keeps its place. The figures
 * themselves are always the present ones, and a finding that comes or goes is listed at once.
 *
 * @param previous  what was shown before in the same drag; `undefined` at its first frame
 */
export function steadyRipple(previous: Ripple | undefined, next: Ripple): Ripple {
  const shownFigures = new Map((previous?.figures ?? []).map((figure, place) => [figureName(figure), place]));
  const shownFindings = new Map((previous?.findings ?? []).map((finding, place) => [finding.key, place]));
  const figures = inPlace(
    next.figures.filter((figure) => shownFigures.has(figureName(figure)) || isLarge(figure)),
    (figure) => shownFigures.get(figureName(figure)),
  );
  const listed = next.findings.filter((finding) => shownFindings.has(finding.key) || isTold(finding));
  const { worstGain, worstLoss } = withWorst(figures, listed);
  const gain = steadyWorst(previous?.worstGain, worstGain, listed.filter(isGain));
  const loss = steadyWorst(previous?.worstLoss, worstLoss, listed.filter(isLoss));
  const findings = inPlace(listed, ({ key }) => shownFindings.get(key));
  return { figures, findings, ...(gain && { worstGain: gain }), ...(loss && { worstLoss: loss }) };
}

function figureName({ of, figure }: FigureChange): string {
  switch (of.kind) {
    case 'hole':
      return `hole ${of.hole} ${figure}`;
    case 'walk':
      return `walk ${of.key} ${figure}`;
    case 'loop':
      return `loop ${of.loop} ${figure}`;
    case 'round':
      return `round ${of.round} ${figure}`;
  }
}

/** Pars and numbers are counted whole; a bearing (radians) is listed as soon as it shows. */
function isLarge({ figure, before, after }: FigureChange): boolean {
  if (figure === 'par' || figure === 'number' || figure === 'bearing') return true;
  return Math.abs(after - before) >= DEAD_BAND;
}

function isTold({ change, before, after }: FindingChange): boolean {
  if (change === 'gained' || change === 'inside its limit again' || !before || !after) return true;
  if (before.code !== after.code || before.severity !== after.severity || after.unit !== 'm') return true;
  return Math.abs(after.measured - before.measured) >= DEAD_BAND;
}

/** Listed ones where they were, new ones after them in their own order. */
function inPlace<Change>(
  changes: readonly Change[],
  placeOf: (change: Change) => number | undefined,
): readonly Change[] {
  const last = Number.MAX_SAFE_INTEGER;
  return [...changes].sort((a, b) => (placeOf(a) ?? last) - (placeOf(b) ?? last));
}

type Worst = FindingChange | FigureChange;

/** The finding named at the pointer stays named, with its present measure, until another is graver. */
function steadyWorst(
  before: Worst | undefined,
  now: Worst | undefined,
  candidates: readonly FindingChange[],
): Worst | undefined {
  if (!before || !now || !('key' in before) || !('key' in now)) return now;
  const same = candidates.find(({ key, change }) => key === before.key && change === before.change);
  const kept = same && aboutFinding(same);
  const graver = aboutFinding(now);
  if (!same || !kept || !graver || now.change !== same.change) return now;
  return SEVERITY_RANK[graver.severity] < SEVERITY_RANK[kept.severity] ? now : same;
}
