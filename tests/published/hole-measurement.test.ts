// Truth: CONGU Unified Handicapping System, Appendix A "Golf Course Measurement", and USGA Handicap Manual §12: from
// the tee to the centre of the green, horizontally, along the designed line of play, leg by leg, for each tee.
// Distances worked out by hand from those rules.
import { openAnalysis } from '@loopwright/analysis';
import { cardLength, type Hole, METRES_PER_YARD, type Plan, type SitePoint } from '@loopwright/model';
import { expect, test } from 'vitest';

const yards = (x: number, y: number): SitePoint => ({ x: x * METRES_PER_YARD, y: y * METRES_PER_YARD });

const DOGLEG: Hole = {
  id: 'h1',
  seat: { in: 'loop', loop: 'a', key: 'a0' },
  tees: { back: yards(0, 0), forward: yards(0, 40), short: yards(20, 260) },
  turnPoints: [{ id: 't1', at: yards(0, 250) }],
  green: { centre: yards(100, 400), length: 28, width: 20, bearing: 0 },
  par: { men: 'by length', women: 'by length' },
  verdict: 'undecided',
  pinned: [],
  waypoints: [],
  relations: [],
};

const PLAN: Plan = {
  loopwright: 1,
  site: { name: 'Measured hole', north: 0, bases: [], marks: [], features: [], images: [] },
  teeSets: [
    { id: 'back', name: 'Back', player: 'scratch man' },
    { id: 'forward', name: 'Forward', player: 'bogey man' },
    { id: 'short', name: 'Short', player: 'bogey woman' },
  ],
  routings: [
    {
      id: 'r',
      name: 'A',
      locked: false,
      loops: [{ id: 'a', name: 'A', holes: ['h1'] }],
      rounds: [{ id: 'round', name: 'A', loops: ['a'] }],
      holes: [DOGLEG],
      spare: [],
    },
  ],
  settings: {},
  dispositions: [],
};

const hole = openAnalysis().analyse(PLAN, 'r').holes.get('h1');
const lengthFrom = (teeSet: string) => hole?.tees.find((tee) => tee.teeSet === teeSet)?.measuredLength ?? 0;

test('a dogleg is measured tee to pivot and pivot to green: 250 + 180.278 = 430.278 yd, 430 on the card', () => {
  // Lengths are kept to the millimetre: 0.0011 yd.
  expect(Math.abs(lengthFrom('back') / METRES_PER_YARD - 430.278)).toBeLessThan(0.0011);
  expect(cardLength(lengthFrom('back'), 'yards')).toBe(430);
});

test('the straight line past the corner, 412.311 yd, is not the length', () => {
  expect(cardLength(lengthFrom('back'), 'yards')).not.toBe(412);
});

test('each tee is measured along the same line of play: 40 yd further on, 40 yd shorter', () => {
  expect(Math.abs(lengthFrom('back') - lengthFrom('forward') - 40 * METRES_PER_YARD)).toBeLessThanOrEqual(0.001);
});

test('a tee past the pivot is measured straight to the green: √(80² + 140²) = 161.245 yd', () => {
  expect(Math.abs(lengthFrom('short') / METRES_PER_YARD - 161.245)).toBeLessThan(0.0011);
});
