import { hasTravelled, type Tool } from './tool.ts';

/** Picks out a finding or a walk. */
export const select: Tool = {
  name: 'select',
  begin: (hit, start, hand) => {
    if (hit?.kind !== 'finding' && hit?.kind !== 'walk') return undefined;
    return {
      cursor: 'pointer',
      move: () => undefined,
      end: (at) => {
        if (hasTravelled(start, at)) return;
        hand.select(hit.kind === 'finding' ? { finding: hit.finding } : { walk: hit.walk });
      },
      cancel: () => undefined,
    };
  },
};
