import type { TeeSet } from '@loopwright/model';

/** From the back. */
export const TEE_SETS: readonly TeeSet[] = [
  { id: 'back', name: 'Back', player: 'scratch man' },
  { id: 'middle', name: 'Middle', player: 'bogey man' },
  { id: 'forward', name: 'Forward', player: 'bogey woman' },
];
