/** What keys mean on a bead that rests; with Shift the arrows pick out several. */
export const BEAD_KEYS: Readonly<Record<string, 'pick up' | 'before' | 'after' | 'walk' | 'take out'>> = {
  Enter: 'pick up',
  ' ': 'pick up',
  ArrowUp: 'before',
  ArrowDown: 'after',
  ArrowRight: 'walk',
  Delete: 'take out',
};

/** On a bead that is held. */
export const HELD_BEAD_KEYS: Readonly<Record<string, 'before' | 'after' | 'put down' | 'leave'>> = {
  ArrowUp: 'before',
  ArrowDown: 'after',
  Enter: 'put down',
  ' ': 'put down',
  Escape: 'leave',
  Tab: 'leave',
};

/** On a walk between two beads. */
export const WALK_KEYS: Readonly<Record<string, 'before' | 'after' | 'hole'>> = {
  ArrowUp: 'before',
  ArrowDown: 'after',
  ArrowLeft: 'hole',
  Escape: 'hole',
};
