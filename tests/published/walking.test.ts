// Truth: W. Tobler, "Three Presentations on Geographical Analysis and Modeling", NCGIA Technical Report 93-1 (1993):
// v = 6·exp(−3.5·|slope + 0.05|) km/h; the formula was read in copies, the values calculated from it by hand.
import { naismithTime, walkingSpeed } from '@loopwright/analysis';
import { describe, expect, test } from 'vitest';

const TOBLER = [
  { slope: -0.1, kmh: 5.036742, secondsPer100: 71.4748 },
  { slope: -0.05, kmh: 6, secondsPer100: 60 },
  { slope: 0, kmh: 5.036742, secondsPer100: 71.4748 },
  { slope: 0.05, kmh: 4.228129, secondsPer100: 85.1441 },
  { slope: 0.1, kmh: 3.549332, secondsPer100: 101.4275 },
  { slope: 0.15, kmh: 2.979512, secondsPer100: 120.8252 },
];

describe("Tobler's walker", () => {
  test.each(TOBLER)('at slope $slope makes $kmh km/h', ({ slope, kmh, secondsPer100 }) => {
    // Half of the last published digit.
    expect(Math.abs(walkingSpeed(slope) * 3.6 - kmh)).toBeLessThan(6e-7);
    expect(Math.abs(100 / walkingSpeed(slope) - secondsPer100)).toBeLessThan(6e-5);
  });

  test('is as fast on the level as on a fall of one in ten, and slower up than down', () => {
    expect(walkingSpeed(0)).toBe(walkingSpeed(-0.1));
    expect(walkingSpeed(0.1)).toBeLessThan(walkingSpeed(-0.1));
  });
});

// Truth: W. Naismith (1892), metric form: 1 h for 5 km and 1 h for 600 m of ascent.
const NAISMITH = [
  { distance: 300, climb: 15, minutes: 5.1 },
  { distance: 8000, climb: 450, minutes: 141 },
  { distance: 20_000, climb: 1000, minutes: 340 },
];

test.each(NAISMITH)("Naismith's $distance m with $climb m of climb take $minutes min", (row) => {
  expect(naismithTime(row.distance, row.climb) / 60).toBeCloseTo(row.minutes, 9);
});
