import type { Finding } from '@loopwright/analysis';
import type { DispositionKind } from '@loopwright/model';

const WHERE_HURT: readonly DispositionKind[] = ['to be checked by', 'checked on site by', 'mitigated by'];

/** What may be decided about a finding: 'kept on purpose' only where nobody can be hurt. */
export function dispositionKinds({ safety }: Pick<Finding, 'safety'>): readonly DispositionKind[] {
  return safety ? WHERE_HURT : [...WHERE_HURT, 'kept on purpose, because'];
}

/** What the words after each kind should say. */
export const WORDS_WANTED: Readonly<Record<DispositionKind, string>> = {
  'to be checked by': 'who, e.g. the surveyor',
  'checked on site by': 'who and when',
  'mitigated by': 'what was done, e.g. a bank of earth',
  'kept on purpose, because': 'why',
};

/** Longest words kept with a decision. */
export const MOST_WORDS = 300;
