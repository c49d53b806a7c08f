import { hasTravelled, type Tool } from './tool.ts';

/** While it is asked which hole is meant, a press on any of one is the answer and moves nothing. */
export const pickHole: Tool = {
  name: 'pick hole',
  begin: (hit, start, hand) => {
    if (!hit || !('hole' in hit)) return undefined;
    const { hole } = hit;
    return {
      cursor: 'pointer',
      move: () => undefined,
      end: (at) => {
        if (!hasTravelled(start, at)) hand.select({ hole });
      },
      cancel: () => undefined,
    };
  },
};
