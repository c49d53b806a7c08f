import { angleBetween, cross, minus } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';
import type { Bend } from '../figures.ts';

/** The changes of direction along a line of play, in order; points that do not turn it are left out. */
export function bendsOf(line: readonly SitePoint[]): readonly Bend[] {
  const bends: Bend[] = [];
  for (let i = 1; i < line.length - 1; i++) {
    const before = line[i - 1];
    const at = line[i];
    const after = line[i + 1];
    if (!before || !at || !after) continue;
    const into = minus(at, before);
    const out = minus(after, at);
    const angle = angleBetween(into, out);
    if (angle > 0) bends.push({ at, angle, side: cross(into, out) > 0 ? 'left' : 'right' });
  }
  return bends;
}
