import type { ParChoice, Verdict } from '@loopwright/model';

export const PAR_CHOICES: readonly ParChoice[] = ['by length', 3, 4, 5, 6];
export const VERDICTS: readonly Verdict[] = ['undecided', 'keeper', 'sound', 'weak'];
