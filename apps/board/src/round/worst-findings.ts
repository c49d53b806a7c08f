import type { Finding, Severity } from '@loopwright/analysis';
import type { HoleId } from '@loopwright/model';

const RANK: Readonly<Record<Severity, number>> = { stop: 0, look: 1, mention: 2 };

/** The more severe of two; `undefined` is none. */
export function worse(first: Severity | undefined, second: Severity | undefined): Severity | undefined {
  if (!first || !second) return first ?? second;
  return RANK[first] <= RANK[second] ? first : second;
}

/** The most severe finding that names each hole. */
export function worstByHole(findings: readonly Finding[]): ReadonlyMap<HoleId, Severity> {
  const worst = new Map<HoleId, Severity>();
  for (const { holes, severity } of findings) {
    for (const hole of holes) worst.set(hole, worse(severity, worst.get(hole)) ?? severity);
  }
  return worst;
}

/** Whether a finding speaks of the walk itself. */
const aboutWalk = ({ code }: Finding) => code.split('-').includes('walk');

/** The most severe finding about each walk from one hole to another, by `walkBetween`. */
export function worstByWalk(findings: readonly Finding[]): ReadonlyMap<string, Severity> {
  const worst = new Map<string, Severity>();
  for (const finding of findings) {
    const [from, to] = finding.holes;
    if (from === undefined || to === undefined || !aboutWalk(finding)) continue;
    const key = walkBetween(from, to);
    worst.set(key, worse(finding.severity, worst.get(key)) ?? finding.severity);
  }
  return worst;
}

export function walkBetween(from: HoleId, to: HoleId): string {
  return `${from} ${to}`;
}
