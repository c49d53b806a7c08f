import type { SitePoint } from '@loopwright/model';

/**
 * Cosine of an angle in degrees, rounded to 1e-9, the same on every engine.
 *
 * Settings are in degrees; the analysis compares dot products with these. By a series of + − × ÷ alone,
 * since engines disagree about the last digits of `Math.cos`.
 */
export function roundedCosine(degrees: number): number {
  const whole = Math.abs(degrees) % 360;
  const half = whole > 180 ? 360 - whole : whole;
  const acute = half > 90 ? 180 - half : half;
  const cosine = cosineOfAcute((acute * Math.PI) / 180);
  return Math.round((half > 90 ? -cosine : cosine) * 1e9) / 1e9;
}

/** Sine of an angle in degrees, rounded to 1e-9, the same on every engine. */
export function roundedSine(degrees: number): number {
  return roundedCosine(degrees - 90);
}

/** Taylor series; twelve terms leave less than 1e-17 up to a right angle. */
function cosineOfAcute(angle: number): number {
  const squared = angle * angle;
  let term = 1;
  let sum = 1;
  for (let k = 1; k <= 12; k++) {
    term *= -squared / ((2 * k - 1) * (2 * k));
    sum += term;
  }
  return sum;
}

/**
 * Arc tangent in radians, the same on every engine: the angle is halved three times by
 * tan(a/2) = t ÷ (1 + √(1 + t²)), then summed as a series.
 */
function arctangent(t: number): number {
  let small = t;
  for (let i = 0; i < 3; i++) small /= 1 + Math.sqrt(1 + small * small);
  const squared = small * small;
  let power = small;
  let sum = 0;
  for (let k = 0; k < 12; k++) {
    sum += (k % 2 === 0 ? power : -power) / (2 * k + 1);
    power *= squared;
  }
  return sum * 8;
}

/** The angle from +x, counter-clockwise, in (−π, π]. */
function angleFromX(v: SitePoint): number {
  if (v.x === 0 && v.y === 0) return 0;
  if (Math.abs(v.y) > Math.abs(v.x)) {
    const rest = arctangent(v.x / v.y);
    return (v.y > 0 ? Math.PI / 2 : -Math.PI / 2) - rest;
  }
  const near = arctangent(v.y / v.x);
  if (v.x > 0) return near;
  return v.y >= 0 ? near + Math.PI : near - Math.PI;
}

const toMicroradian = (angle: number): number => Math.round(angle * 1e6) / 1e6;

const TURN = toMicroradian(2 * Math.PI);

/** Compass bearing of a vector: radians clockwise from +y, in [0, 2π), rounded to 1e-6; 0 for a vector of no length. */
export function bearingOf(vector: SitePoint): number {
  if (vector.x === 0 && vector.y === 0) return 0;
  const bearing = Math.PI / 2 - angleFromX(vector);
  const rounded = toMicroradian(bearing < 0 ? bearing + 2 * Math.PI : bearing);
  return rounded >= TURN ? 0 : rounded;
}

/** The angle between two vectors, radians in [0, π], rounded to 1e-6; 0 where one has no length. */
export function angleBetween(a: SitePoint, b: SitePoint): number {
  const along = a.x * b.x + a.y * b.y;
  const across = a.x * b.y - a.y * b.x;
  return toMicroradian(Math.abs(angleFromX({ x: along, y: across })));
}
