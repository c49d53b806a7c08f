import type { FindingChange, Severity } from '@loopwright/analysis';
import { changeSentence } from '@loopwright/analysis/wording';
import type { FindingKey } from '@loopwright/model';
import type { Change } from '../../board/parts.ts';
import type { Names } from '../../reading/names.ts';
import { figureChangeWords } from './figure-change-words.ts';

/** One finding that came, went, eased or worsened. */
export interface FindingChangeView {
  readonly key: FindingKey;
  readonly mark: Severity | 'better';
  readonly sentence: string;
  /** 'new', 'inside its limit', '+38 yd'. */
  readonly tag: string;
  /** 'was 96 yd, limit 148 yd'; where the sentence has the figures, the limit alone. */
  readonly below: string;
  /** Whether there is still a place to go to. */
  readonly open: boolean;
}

export interface ChangeLists {
  readonly worse: readonly FindingChangeView[];
  readonly better: readonly FindingChangeView[];
}

const isWorse = ({ change }: FindingChange) => change === 'gained' || change === 'worsened';

/** What got worse and what got better, as the ripple lists it. */
export function toChangeLists(change: Change, names: Names): ChangeLists {
  const { findings } = change.ripple;
  return {
    worse: findings.filter(isWorse).map((each) => toView(each, names)),
    better: findings.filter((each) => !isWorse(each)).map((each) => toView(each, names)),
  };
}

function toView(change: FindingChange, names: Names): FindingChangeView {
  const { tag, below } = figureChangeWords(change, names);
  return {
    key: change.key,
    mark: isWorse(change) ? (change.after?.severity ?? 'look') : 'better',
    sentence: changeSentence(change, names),
    tag,
    below,
    open: change.after !== undefined,
  };
}
