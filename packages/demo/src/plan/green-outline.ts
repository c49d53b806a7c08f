import { pointToMillimetre, type Ring, type SitePoint } from '@loopwright/model';

/** Sixteen directions around a circle, by exact halving: no trigonometry, so the same on every engine. */
const AROUND: readonly SitePoint[] = compass(4);

function compass(halvings: number): readonly SitePoint[] {
  let spokes: readonly SitePoint[] = [
    { x: 1, y: 0 },
    { x: 0, y: 1 },
    { x: -1, y: 0 },
    { x: 0, y: -1 },
  ];
  while (spokes.length < 2 ** halvings) {
    const before = spokes;
    spokes = before.flatMap((spoke, index) => [spoke, between(spoke, before[(index + 1) % before.length] ?? spoke)]);
  }
  return spokes;
}

function between(a: SitePoint, b: SitePoint): SitePoint {
  const x = a.x + b.x;
  const y = a.y + b.y;
  const length = Math.sqrt(x * x + y * y);
  return { x: x / length, y: y / length };
}

/**
 * A green of believable shape: an oval with a soft bulge or two, relative to its centre, its long axis along `towards`.
 *
 * @param length  along the axis (m)
 * @param width  across it (m)
 * @param towards  unit vector of the long axis
 * @param random  numbers in [0, 1)
 */
export function greenOutline(length: number, width: number, towards: SitePoint, random: () => number): Ring {
  const bulges = AROUND.map(() => random());
  return AROUND.map((spoke, index) => {
    const left = bulges[(index + 15) % 16] ?? 0.5;
    const right = bulges[(index + 1) % 16] ?? 0.5;
    const swell = 0.9 + 0.2 * ((left + 2 * (bulges[index] ?? 0.5) + right) / 4);
    const along = (spoke.x * length * swell) / 2;
    const across = (spoke.y * width * swell) / 2;
    return pointToMillimetre({
      x: along * towards.x - across * towards.y,
      y: along * towards.y + across * towards.x,
    });
  });
}
