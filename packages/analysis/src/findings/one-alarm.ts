import type { Finding, Severity } from '../figures.ts';

export const SEVERITY_RANK: Readonly<Record<Severity, number>> = { stop: 0, look: 1, mention: 2 };

/** How far a finding is past its limit, as a share of the limit; 0 at the limit, larger is worse. */
export function excessOf({ measured, limit, worse }: Finding): number {
  const past = worse === 'less' ? limit - measured : measured - limit;
  return past / Math.max(Math.abs(limit), 1);
}

/** Whether `a` is the worse of two findings: by severity, then by how far past the limit, then by key. */
export function isWorseFinding(a: Finding, b: Finding): boolean {
  const rank = SEVERITY_RANK[a.severity] - SEVERITY_RANK[b.severity];
  if (rank !== 0) return rank < 0;
  const excess = excessOf(a) - excessOf(b);
  return excess !== 0 ? excess > 0 : a.key < b.key;
}

/**
 * One alarm for two holes: the worst of what was found between them, with the codes of the others in its detail
 * (`also`) and the two holes (`pair`), so that a change from one code to another is known for the same alarm.
 *
 * Source: calibration on mapped courses; each rule by itself made a wall of alarms of well-liked ones.
 */
export function oneAlarm(pair: string, findings: readonly Finding[]): Finding | undefined {
  let worst = findings[0];
  if (!worst) return undefined;
  for (const finding of findings) if (isWorseFinding(finding, worst)) worst = finding;
  const code = worst.code;
  const others = [...new Set(findings.map((finding) => finding.code))].filter((other) => other !== code).sort();
  const also = others.length === 0 ? {} : { also: others.join(' ') };
  return { ...worst, detail: { ...worst.detail, pair, ...also } };
}
