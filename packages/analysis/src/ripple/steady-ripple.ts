import { SEVERITY_RANK } from '../findings/one-alarm.ts';
import { isGain, isLoss, withWorst } from './compare-analyses.ts';
import { aboutFinding, byGravity } from './finding-changes.ts';
import type { FigureChange, FindingChange, Ripple } from './ripple.ts';

/** While a drag goes on, a change joins the list once it is this large, metres. */
const DEAD_BAND = 2;

/**
 * The ripple of a drag in progress, kept from flickering: a figure, or a finding that eases or worsens, joins the
 * list once it changed by 2 m and stays until nothing of it shows. Figures stand in the order of the plan; among
 * findings of one gravity what is listed keeps its place, and a graver one goes before it. The figures themselves are
 * always the present ones, and a finding that comes or goes is listed at once.
 *
 * @param previous  what was shown before in the same drag; `undefined` at its first frame
 */
export function steadyRipple(previous: Ripple | undefined, next: Ripple): Ripple {
  const shownFigures = new Set((previous?.figures ?? []).map(figureName));
  const shownFindings = new Map((previous?.findings ?? []).map((finding, place) => [finding.key, place]));
  const figures = next.figures.filter((figure) => shownFigures.has(figureName(figure)) || isLarge(figure));
  const listed = next.findings.filter((finding) => shownFindings.has(finding.key) || isTold(finding));
  const { worstGain, worstLoss } = withWorst(figures, listed);
  const gain = steadyWorst(previous?.worstGain, worstGain, listed.filter(isGain));
  const loss = steadyWorst(previous?.worstLoss, worstLoss, listed.filter(isLoss));
  const findings = inPlace(listed, shownFindings);
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

/** The gravest first; of one gravity listed ones where they were, new ones after them in their own order. */
function inPlace(changes: readonly FindingChange[], places: ReadonlyMap<string, number>): readonly FindingChange[] {
  const placeOf = ({ key }: FindingChange) => places.get(key) ?? Number.MAX_SAFE_INTEGER;
  return [...changes].sort((a, b) => byGravity(a, b) || placeOf(a) - placeOf(b));
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
