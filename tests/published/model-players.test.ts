// Truth: Course Rating System: model players (Golf Association of Michigan, Oregon Golf Association, Course Rating
// System Manual §9), in yards at sea level, and the approach each leaves.
import { fullShots, reachOf } from '@loopwright/analysis';
import { METRES_PER_YARD, settingsOf } from '@loopwright/model';
import { describe, expect, test } from 'vitest';

const SETTINGS = settingsOf({});

const PLAYERS = [
  { player: 'scratch man', drive: 250, two: 470 },
  { player: 'scratch woman', drive: 210, two: 400 },
  { player: 'bogey man', drive: 200, two: 370 },
  { player: 'bogey woman', drive: 150, two: 280 },
] as const;

describe('model players', () => {
  test.each(PLAYERS)('the $player drives $drive yd and reaches $two yd in two', ({ player, drive, two }) => {
    const reach = reachOf(player, SETTINGS);
    // Settings are metres to the millimetre.
    expect(Math.abs(reach.drive / METRES_PER_YARD - drive)).toBeLessThan(0.001);
    expect(Math.abs((reach.drive + reach.second) / METRES_PER_YARD - two)).toBeLessThan(0.0015);
  });
});

/** Length − 250 [210] on a par 4, − 470 [400] on a par 5; bogey − 200 [150], − 370 [280], − 540 [410]. */
const APPROACHES = [
  { player: 'scratch man', par: 4, length: 400, left: 150, shots: 1 },
  { player: 'bogey man', par: 4, length: 400, left: 30, shots: 2 }, // cannot reach in two: a three-shot hole
  { player: 'scratch man', par: 4, length: 360, left: 110, shots: 1 },
  { player: 'bogey man', par: 4, length: 360, left: 160, shots: 1 },
  { player: 'scratch man', par: 5, length: 540, left: 70, shots: 2 },
  { player: 'bogey man', par: 5, length: 540, left: 170, shots: 2 },
  { player: 'bogey man', par: 5, length: 600, left: 60, shots: 3 },
  { player: 'scratch woman', par: 4, length: 330, left: 120, shots: 1 },
  { player: 'bogey woman', par: 4, length: 330, left: 50, shots: 2 },
  { player: 'scratch woman', par: 5, length: 480, left: 80, shots: 2 },
  { player: 'bogey woman', par: 5, length: 480, left: 70, shots: 3 },
  // The longest par 4s of the table: rated as reached in two, whatever is left.
  { player: 'scratch man', par: 4, length: 490, left: 240, shots: 1 },
  { player: 'scratch woman', par: 4, length: 420, left: 210, shots: 1 },
  { player: 'scratch man', par: 5, length: 710, left: 240, shots: 2 },
] as const;

describe('approach left', () => {
  test.each(APPROACHES)('$player, par $par of $length yd: $left yd after $shots', (row) => {
    const reach = reachOf(row.player, SETTINGS);
    const { left, finishes } = fullShots(row.length * METRES_PER_YARD, row.par, reach);
    expect(finishes).toHaveLength(row.shots);
    expect(Math.abs(left / METRES_PER_YARD - row.left)).toBeLessThan(0.003);
  });

  test('a hole within the tee shot leaves no approach', () => {
    expect(fullShots(200 * METRES_PER_YARD, 3, reachOf('scratch man', SETTINGS)).finishes).toEqual([]);
  });
});
