import type { Analysis } from '@loopwright/analysis';
import { expect, test } from 'vitest';
import { namesOf } from '../../../reading/names.ts';
import { ANALYSIS, PLAN, ROUTING } from '../../../reading/two-holes.test-plan.ts';
import { toClubHoles } from './approach-clubs.ts';
import { toParBars } from './length-bars.ts';
import { shortClub, toStrip } from './rhythm-strip.ts';

const READING = { units: 'metres', teeSet: 'back' } as const;
const NAMES = namesOf(PLAN, ROUTING, 'metres');

/** The sample with four holes: par 4s of 400, 300 and 200 m, a par 3 of 150 m; approaches as given. */
function withHoles(): { readonly analysis: Analysis; readonly round: Analysis['rounds'][number] } {
  const [round, h1] = [ANALYSIS.rounds[0], ANALYSIS.holes.get('h1')];
  const [tee] = h1?.tees ?? [];
  if (!round || !h1 || !tee) throw new Error('the sample has no round, hole or tee');
  const made = [
    { id: 'h1', length: 300, par: 4, club: '7 iron', side: 'left' },
    { id: 'h2', length: 150, par: 3, club: undefined, side: 'right' },
    { id: 'x3', length: 400, par: 4, club: '4 iron', side: undefined },
    { id: 'x4', length: 200, par: 4, club: '7 iron', side: undefined },
  ] as const;
  const holes = made.map(({ id, length, par, club, side }) => {
    const bends = side ? [{ at: tee.at, angle: side === 'left' ? 1 : 0.001, side }] : [];
    const own = { ...tee, measuredLength: length, ...(club ? { approachClub: club } : {}) };
    return [id, { ...h1, id, tees: [own], par: { men: par, women: par }, bends }] as const;
  });
  return { analysis: { ...ANALYSIS, holes: new Map(holes) }, round: { ...round, holes: made.map(({ id }) => id) } };
}

// By hand: (300 + 400 + 200) ÷ 3 = 300.
test('lengths stand by par, the longest first, with the mean of their par', () => {
  const { analysis, round } = withHoles();
  const bars = toParBars(analysis, round, READING, NAMES);
  expect(bars.map(({ par, mean }) => [par, mean])).toEqual([
    [3, '150'],
    [4, '300'],
  ]);
  expect(bars[1]?.bars.map(({ figure, share }) => [figure, share])).toEqual([
    ['400', 1],
    ['300', 0.75],
    ['200', 0.5],
  ]);
  expect(bars[1]?.meanShare).toBe(0.75);
});

test('clubs stand from the longest used to the shortest, with those between that nobody needs', () => {
  const { analysis, round } = withHoles();
  const clubs = toClubHoles(analysis, round, READING, NAMES);
  expect(clubs.map(({ club, holes }) => [club, holes.length])).toEqual([
    ['from the tee', 1],
    ['4 iron', 1],
    ['5 iron', 0],
    ['6 iron', 0],
    ['7 iron', 2],
  ]);
});

test('a round without a complete hole has neither bars nor clubs', () => {
  const { round } = withHoles();
  const empty = { ...ANALYSIS, holes: new Map() };
  expect(toParBars(empty, round, READING, NAMES)).toEqual([]);
  expect(toClubHoles(empty, round, READING, NAMES)).toEqual([]);
});

test('the strip tells the round as it is played; a bend too slight to count is none', () => {
  const { analysis, round } = withHoles();
  const strip = toStrip({ plan: PLAN, routing: ROUTING, analysis }, round, READING, NAMES);
  expect(strip.map(({ par, share, bend, clubShort }) => [par, share, bend, clubShort])).toEqual([
    ['4', 0.75, 'left', '7i'],
    ['3', 0.375, 'straight', '·'],
    ['4', 1, 'straight', '4i'],
    ['4', 0.5, 'straight', '7i'],
  ]);
});

test.each([
  ['3 wood', '3w'],
  ['3 hybrid', '3h'],
  ['pitching wedge', 'pw'],
  ['', ''],
])('%j is written %j where there is little room', (club, short) => {
  expect(shortClub(club)).toBe(short);
});
