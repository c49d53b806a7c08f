/** `next`: the second is played straight after the first. */
export type PairRelation = 'next' | 'other';
