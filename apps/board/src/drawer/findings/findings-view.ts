import { dispositionOf, type Finding, type Severity } from '@loopwright/analysis';
import { sentenceOf, severityWord, sourceOf, titleOf } from '@loopwright/analysis/wording';
import type { Disposition, FindingKey, Plan, Routing } from '@loopwright/model';
import type { Names } from '../../reading/names.ts';

/** One finding as the list shows it. */
export interface FindingView {
  readonly key: FindingKey;
  readonly severity: Severity;
  readonly severityWord: string;
  readonly title: string;
  readonly sentence: string;
  readonly source: string;
  readonly safety: boolean;
  /** Numbers of the holes, for the group headings and the order. */
  readonly holes: readonly string[];
  readonly finding: Finding;
  readonly state: 'open' | 'decided' | 'reopened';
  /** What was decided: 'to be checked by the surveyor'; empty while open. */
  readonly decided: string;
}

/** Every finding of the routing in the analysis's order, worded for this reader. O(findings · log dispositions). */
export function toFindingViews(
  plan: Plan,
  routing: Routing,
  findings: readonly Finding[],
  names: Names,
): readonly FindingView[] {
  return findings.map((finding) => {
    const { state, disposition } = dispositionOf(finding, plan.dispositions, routing.id);
    return {
      key: finding.key,
      severity: finding.severity,
      severityWord: severityWord(finding.severity),
      title: titleOf(finding.code),
      sentence: sentenceOf(finding, names),
      source: sourceOf(finding),
      safety: finding.safety,
      holes: finding.holes.map((hole) => names.number(hole)),
      finding,
      state,
      decided: disposition ? decidedWords(disposition) : '',
    };
  });
}

export function decidedWords({ kind, words }: Pick<Disposition, 'kind' | 'words'>): string {
  return `${kind} ${words}`;
}
