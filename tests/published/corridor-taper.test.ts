// Truth: North Braddock Borough, Pennsylvania, code §155.156 (amlegal.com): centreline to property line 75 ft at the
// tee, 150 ft at the landing area, 100 ft at the green. One ordinance, not a standard.
import { corridorHalfWidthAt } from '@loopwright/analysis';
import { METRES_PER_FOOT, settingsOf } from '@loopwright/model';
import { describe, expect, test } from 'vitest';

const ORDINANCE = [
  { along: 0, halfWidth: 75 * METRES_PER_FOOT },
  { along: 240, halfWidth: 150 * METRES_PER_FOOT },
  { along: 400, halfWidth: 100 * METRES_PER_FOOT },
];

describe('corridor taper', () => {
  test('the defaults are the ordinance, to the whole metre', () => {
    const settings = settingsOf({});
    expect(settings['corridor-tee']).toBe(Math.round(75 * METRES_PER_FOOT));
    expect(settings['corridor-landing']).toBe(Math.round(150 * METRES_PER_FOOT));
    expect(settings['corridor-green']).toBe(Math.round(100 * METRES_PER_FOOT));
  });

  test.each([
    { along: 0, feet: 75 },
    { along: 120, feet: 112.5 },
    { along: 240, feet: 150 },
    { along: 320, feet: 125 },
    { along: 400, feet: 100 },
  ])('$along m from the tee the half-width is $feet ft', ({ along, feet }) => {
    expect(corridorHalfWidthAt(ORDINANCE, along) / METRES_PER_FOOT).toBeCloseTo(feet, 9);
  });

  test('before the tee and past the green it stays as it is there', () => {
    expect(corridorHalfWidthAt(ORDINANCE, -10)).toBe(75 * METRES_PER_FOOT);
    expect(corridorHalfWidthAt(ORDINANCE, 500)).toBe(100 * METRES_PER_FOOT);
  });
});
