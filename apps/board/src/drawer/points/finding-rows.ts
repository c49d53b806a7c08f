import type { Analysis } from '@loopwright/analysis';
import { sentenceOf, severityWord } from '@loopwright/analysis/wording';
import { toFindingView } from '../../drawing/finding-view.ts';
import type { Names } from '../../reading/names.ts';
import type { IndexRow } from './index-rows.ts';

/** The findings at their places, the worst first; one of the whole round has none. */
export function findingRows({ findings }: Analysis, names: Names): readonly IndexRow[] {
  return findings.map((finding) => {
    const at = toFindingView(finding)?.at;
    return {
      key: finding.key,
      title: sentenceOf(finding, names),
      facts: severityWord(finding.severity),
      ...(at ? { at } : {}),
    };
  });
}
