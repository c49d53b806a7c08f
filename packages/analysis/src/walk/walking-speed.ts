/**
 * Speed of a walker on a footpath, metres per second, rounded to 1e-9.
 *
 * 6 · exp(−3.5 · |slope + 0.05|) km/h: fastest on a slight fall, and not the same up as down.
 *
 * @param slope  rise over run, uphill positive
 * Source: W. Tobler, "Three Presentations on Geographical Analysis and Modeling", NCGIA Technical Report 93-1 (1993),
 * known from copies of the formula; its 3/5 for walking off paths is not applied.
 */
export function walkingSpeed(slope: number): number {
  const kilometresPerHour = 6 * Math.exp(-3.5 * Math.abs(slope + 0.05));
  // Engines differ in the last digit of `exp`.
  return Math.round((kilometresPerHour / 3.6) * 1e9) / 1e9;
}
