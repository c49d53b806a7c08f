import type { Analysis, Finding } from '../figures.ts';
import { excessOf, isWorseFinding, SEVERITY_RANK } from '../findings/one-alarm.ts';
import { wasTakenUp } from '../rhythm/taken-up-before.ts';
import type { FindingChange } from './ripple.ts';

/** Half of what is shown of metres and degrees; everything else is counted whole. */
const HALF_SHOWN = 0.5;

/** Got worse before got better. */
const SIDE_RANK: Readonly<Record<FindingChange['change'], number>> = {
  gained: 0,
  worsened: 0,
  'inside its limit again': 1,
  eased: 1,
};

/** Of one severity: what came before what grew, what went before what shrank. */
const CHANGE_RANK: Readonly<Record<FindingChange['change'], number>> = {
  gained: 0,
  worsened: 1,
  'inside its limit again': 0,
  eased: 1,
};

/**
 * Every finding that came, went, eased or worsened, the worst first.
 *
 * Matched by key. Two holes raise one alarm at a time, so where an alarm only changed its reason it is matched by
 * the two holes: it did not go away. A site mark that nobody used before either is left out.
 */
export function findingChanges(before: Analysis, after: Analysis): readonly FindingChange[] {
  const known = new Map(before.findings.map((finding) => [finding.key, finding]));
  const kept = new Set(after.findings.map(({ key }) => key));
  const left = new Map(
    before.findings.flatMap((finding) => {
      const pair = pairOf(finding);
      return kept.has(finding.key) || pair === undefined ? [] : [[pair, finding] as const];
    }),
  );
  const changes: FindingChange[] = [];
  const matched = new Set<string>();
  for (const finding of after.findings) {
    const was = known.get(finding.key) ?? left.get(pairOf(finding) ?? '');
    if (was) matched.add(was.key);
    const change = was ? changeBetween(was, finding) : 'gained';
    if (!was && finding.code === 'mark-unused' && !wasTakenUp(finding, before)) continue;
    if (change) changes.push({ change, key: finding.key, ...(was && { before: was }), after: finding });
  }
  for (const finding of before.findings) {
    if (matched.has(finding.key)) continue;
    changes.push({ change: 'inside its limit again', key: finding.key, before: finding });
  }
  return changes.sort(byWeight);
}

function pairOf({ detail }: Finding): string | undefined {
  return typeof detail.pair === 'string' ? detail.pair : undefined;
}

function changeBetween(was: Finding, is: Finding): FindingChange['change'] | undefined {
  if (was === is) return undefined;
  const rank = SEVERITY_RANK[is.severity] - SEVERITY_RANK[was.severity];
  if (rank !== 0) return rank < 0 ? 'gained' : 'eased';
  if (was.code !== is.code) return isWorseFinding(is, was) ? 'worsened' : 'eased';
  const step = is.unit === 'm' || is.unit === 'deg' ? HALF_SHOWN : 0;
  const by = is.measured - was.measured;
  if (Math.abs(by) < step || by === 0) return undefined;
  return by > 0 === (is.worse === 'more') ? 'worsened' : 'eased';
}

/** The finding that a change is about: as it is, or as it was when it is gone. */
export function aboutFinding({ after, before }: FindingChange): Finding | undefined {
  return after ?? before;
}

/** By severity, worse before better; what came before what worsened: the order in which the list is read. */
export function byGravity(a: FindingChange, b: FindingChange): number {
  const [first, second] = [aboutFinding(a), aboutFinding(b)];
  const severity = first && second ? SEVERITY_RANK[first.severity] - SEVERITY_RANK[second.severity] : 0;
  return SIDE_RANK[a.change] - SIDE_RANK[b.change] || severity || CHANGE_RANK[a.change] - CHANGE_RANK[b.change];
}

function byWeight(a: FindingChange, b: FindingChange): number {
  const gravity = byGravity(a, b);
  const [first, second] = [aboutFinding(a), aboutFinding(b)];
  if (gravity !== 0 || !first || !second) return gravity;
  return excessOf(second) - excessOf(first) || (a.key < b.key ? -1 : 1);
}
