import type { CanvasPoint } from '@loopwright/model';

/** What two fingers did between two moments: how far the paper went, how much nearer it came, about which place. */
export interface Pinch {
  readonly by: CanvasPoint;
  readonly factor: number;
  readonly about: CanvasPoint;
}

type Fingers = readonly [CanvasPoint, CanvasPoint];

/** Two fingers before and after. Fingers that touch each other zoom nothing. */
export function pinchBetween(before: Fingers, after: Fingers): Pinch {
  const [was, about] = [middle(before), middle(after)];
  const [apartBefore, apartAfter] = [apart(before), apart(after)];
  const factor = apartBefore > 1 && apartAfter > 1 ? apartAfter / apartBefore : 1;
  return { by: { x: about.x - was.x, y: about.y - was.y }, factor, about };
}

const middle = ([a, b]: Fingers): CanvasPoint => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });

const apart = ([a, b]: Fingers): number => Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2);
