import { expect, test } from 'vitest';
import { ANALYSIS, PLAN, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { toCardView } from './card-view.ts';
import { toLineView } from './line-view.ts';

// By hand: 365.76 m is exactly 400 yd, 150 m is 164.04 yd.
test('the card prints each hole and sums what it prints', () => {
  const card = toCardView(PLAN, ROUTING, ANALYSIS, 'yards');
  const [front] = card.loops;
  expect(front?.rows.map(({ number, men, lengths }) => [number, men.figure, lengths[0]?.figure])).toEqual([
    ['1', '4', '400'],
    ['2', '3', '164'],
  ]);
  expect(front?.total?.lengths[0]?.figure).toBe('564');
  expect(card.rounds[0]).toMatchObject({ walked: '150', time: '8 min' });
});

test('a hole in the round that lacks a part is named and shows no figure', () => {
  const h2 = ANALYSIS.holes.get('h2');
  if (!h2) throw new Error('the sample has no hole h2');
  const holes = new Map(ANALYSIS.holes).set('h2', { ...h2, missing: 'green' });
  const card = toCardView(PLAN, ROUTING, { ...ANALYSIS, holes }, 'metres');
  expect(card.incomplete).toBe('2');
  expect(card.loops[0]?.rows[1]).toMatchObject({ men: { figure: '–' }, lengths: [{ figure: '–' }] });
});

test('both pars of an overlap are told', () => {
  const h1 = ANALYSIS.holes.get('h1');
  if (!h1) throw new Error('the sample has no hole h1');
  const overlap = { ...h1, parsByLength: { men: [4], women: [4, 5] } };
  const holes = new Map(ANALYSIS.holes).set('h1', overlap);
  const card = toCardView(PLAN, ROUTING, { ...ANALYSIS, holes }, 'metres');
  expect(card.loops[0]?.rows[0]?.parWords).toBe('By length: men 4, women 4 or 5');
});

test('a straight hole north reads 000° N and the walk on is told', () => {
  const { rows, player } = toLineView(PLAN, ROUTING, ANALYSIS, { units: 'yards', teeSet: 'back' });
  expect(player).toBe('scratch man');
  expect(rows[0]).toMatchObject({ direction: '000° N', bends: 'straight', approach: '–', walk: '50', back: '' });
});

test('a par is by length until the designer chose one', () => {
  const holes = ROUTING.holes.map((hole) =>
    hole.id === 'h2' ? { ...hole, par: { men: 4, women: 'by length' } as const } : hole,
  );
  const card = toCardView(PLAN, { ...ROUTING, holes }, ANALYSIS, 'yards');
  expect(card.loops[0]?.rows.map(({ men }) => men.chosen)).toEqual(['by length', 'by hand']);
});
