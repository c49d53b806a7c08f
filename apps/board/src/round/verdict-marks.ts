import type { Verdict } from '@loopwright/model';

/** The shape of a verdict on a bead; the word stands in the marks' list, in the tip and in what is heard. */
export const VERDICT_MARKS: Readonly<Record<Verdict, string>> = { keeper: '★', sound: '☆', weak: '▽', undecided: '' };
