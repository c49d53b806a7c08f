/** A finite number from `least` to `most`, both included. Nothing is clamped: a figure nobody chose is worse than none. */
export function parseNumber(value: unknown, least: number, most: number): number | undefined {
  if (typeof value !== 'number' || !(value >= least && value <= most)) return undefined;
  return value + 0; // −0 would not come back from a file as it went in
}
