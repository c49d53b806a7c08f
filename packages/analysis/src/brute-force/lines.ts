import type { SitePoint } from '@loopwright/model';

/** How far apart lines are sampled, metres. A sampled distance is never short, and never more than half of this long. */
export const STEP = 0.25;

/** For tests: plain length between two points. */
export const apart = (a: SitePoint, b: SitePoint) => Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2);

/** For tests: a line as points every 25 cm, each with its distance from the start and the direction it is walked in. */
export interface Sample {
  readonly at: SitePoint;
  readonly along: number;
  readonly towards: { readonly x: number; readonly y: number };
}

/** For tests: the line sampled, vertices included. */
export function sampled(line: readonly SitePoint[]): readonly Sample[] {
  const samples: Sample[] = [];
  let before = 0;
  line.slice(1).forEach((to, place) => {
    const from = line[place] ?? to;
    const length = apart(from, to);
    if (length === 0) return;
    const towards = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
    const steps = Math.ceil(length / STEP);
    for (let step = samples.length === 0 ? 0 : 1; step <= steps; step++) {
      const along = (length * step) / steps;
      samples.push({
        at: { x: from.x + towards.x * along, y: from.y + towards.y * along },
        along: before + along,
        towards,
      });
    }
    before += length;
  });
  return samples;
}

/** For tests: the sample nearest to a point, with its distance. */
export function nearest(point: SitePoint, samples: readonly Sample[]): { distance: number; along: number } {
  let best = { distance: Number.POSITIVE_INFINITY, along: 0 };
  for (const { at, along } of samples) {
    const distance = apart(point, at);
    if (distance < best.distance) best = { distance, along };
  }
  return best;
}

/** For tests: a line's length, one leg after the other. */
export function lengthOf(line: readonly SitePoint[]): number {
  return line.slice(1).reduce((sum, to, place) => sum + apart(line[place] ?? to, to), 0);
}

/** For tests: the point so far along, or undefined past the end. */
export function placeAlong(line: readonly SitePoint[], metres: number): SitePoint | undefined {
  let rest = metres;
  for (let leg = 0; leg + 1 < line.length; leg++) {
    const from = line[leg];
    const to = line[leg + 1];
    if (!from || !to) return undefined;
    const length = apart(from, to);
    if (rest <= length && length > 0) {
      return { x: from.x + ((to.x - from.x) * rest) / length, y: from.y + ((to.y - from.y) * rest) / length };
    }
    rest -= length;
  }
  return undefined;
}

const side = (a: SitePoint, b: SitePoint, p: SitePoint) => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);

/** For tests: where two lines cross, with the distance along each; by the sides that the ends lie on. */
export function crossings(first: readonly SitePoint[], second: readonly SitePoint[]) {
  const found: { at: SitePoint; alongFirst: number; alongSecond: number }[] = [];
  let before = 0;
  first.slice(1).forEach((b, i) => {
    const a = first[i] ?? b;
    let beforeSecond = 0;
    second.slice(1).forEach((d, j) => {
      const c = second[j] ?? d;
      const fromC = side(a, b, c);
      const fromD = side(a, b, d);
      if (fromC * fromD < 0 && side(c, d, a) * side(c, d, b) < 0) {
        const share = fromC / (fromC - fromD);
        const at = { x: c.x + (d.x - c.x) * share, y: c.y + (d.y - c.y) * share };
        found.push({ at, alongFirst: before + apart(a, at), alongSecond: beforeSecond + apart(c, at) });
      }
      beforeSecond += apart(c, d);
    });
    before += apart(a, b);
  });
  return found;
}

/** For tests: whether a point lies in an outline, by the angle the outline turns about it. */
export function turnsAbout(outline: readonly SitePoint[], point: SitePoint): boolean {
  let turned = 0;
  outline.forEach((from, place) => {
    const to = outline[(place + 1) % outline.length] ?? from;
    const a = Math.atan2(from.y - point.y, from.x - point.x);
    const b = Math.atan2(to.y - point.y, to.x - point.x);
    let by = b - a;
    if (by > Math.PI) by -= 2 * Math.PI;
    if (by < -Math.PI) by += 2 * Math.PI;
    turned += by;
  });
  return Math.abs(turned) > Math.PI;
}
