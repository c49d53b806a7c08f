import type { Hole, Routing } from '@loopwright/model';
import { expect, test } from 'vitest';
import { namesOf } from '../reading/names.ts';
import { ANALYSIS, PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { toHoleMenu } from './hole-menu-view.ts';
import type { MenuEntry } from './menu-entry.ts';
import type { MenuSource } from './menu-source.ts';

function menuOf(chosen: readonly string[], over: Partial<Hole> = {}, part?: MenuSource['part']) {
  const routing: Routing = {
    ...ROUTING,
    holes: ROUTING.holes.map((each) => (each.id === 'h1' ? { ...each, ...over } : each)),
  };
  const names = namesOf(PLAN, routing, 'metres');
  const source = { plan: PLAN, routing, analysis: ANALYSIS, names, freshId: (letter: string) => `${letter}9` };
  const menu = toHoleMenu({ ...source, ...(part ? { part } : {}) }, chosen);
  const entries = menu?.parts.flatMap((each) => each.entries) ?? [];
  const of = (title: string): MenuEntry => {
    const found = entries.find((entry) => entry.title === title);
    if (!found) throw new Error(`no entry '${title}' among: ${entries.map((entry) => entry.title).join('; ')}`);
    return found;
  };
  return { title: menu?.title, titles: entries.map((entry) => entry.title), of };
}
const editOf = (entry: MenuEntry) => ('act' in entry && entry.act.do === 'edit' ? entry.act.edit : undefined);

test('the menu is named after what is picked out', () => {
  expect(menuOf(['h1']).title).toBe('hole 1');
  expect(menuOf(['h1', 'h2']).title).toBe('holes 1 and 2');
  expect(menuOf(['s1', 'h1', 'h2']).title).toBe('holes 1, 2 and spare 1');
  expect(menuOf([]).title).toBeUndefined();
});

test('a turn point goes into the middle of the longest leg', () => {
  expect(editOf(menuOf(['h1']).of('Put a turn point in'))).toEqual({
    edit: 'add turn point',
    routing: 'a',
    hole: 'h1',
    turn: 't9',
    place: 0,
    at: { x: 0, y: 182.88 },
  });
});

test('the turn point under the pointer is the one that is taken out', () => {
  const turns = [
    { id: 't1', at: { x: 0, y: 100 } },
    { id: 't2', at: { x: 0, y: 200 } },
  ];
  const { titles, of } = menuOf(['h1'], { turnPoints: turns }, 'turn:t2');
  expect(editOf(of('Take this turn point out'))).toMatchObject({ edit: 'remove turn point', turn: 't2' });
  expect(titles.filter((title) => title.startsWith('Take ') && title.includes('turn point'))).toHaveLength(1);
});

test('what another hole is needed for can be answered by pointing, or from a list', () => {
  const swap = menuOf(['h1']).of('Swap places with …');
  if (!('inside' in swap)) throw new Error('no list');
  expect(swap.inside.map(({ title }) => title)).toEqual(['Point at it …', 'Hole 2']);
  expect(swap.inside.map(editOf)[1]).toEqual({ edit: 'swap places', routing: 'a', hole: 'h1', with: 'h2' });
});

test('a spare hole exchanges corridors with any hole and comes back after a chosen one', () => {
  const menu = menuOf(['s1']);
  const back = menu.of('Bring back after …');
  if (!('inside' in back)) throw new Error('no list');
  expect(back.inside.map(editOf)[1]).toEqual({
    edit: 'bring back',
    routing: 'a',
    hole: 's1',
    loop: 'front',
    after: 'h1',
  });
  expect(menu.titles).not.toContain('Take out to the spare tray');
});

test('a spare hole is inserted between a hole and the next', () => {
  const insert = menuOf(['h1']).of('Insert a spare hole after it …');
  if (!('inside' in insert)) throw new Error('no list');
  expect(insert.inside.map(editOf)).toEqual([
    { edit: 'bring back', routing: 'a', hole: 's1', loop: 'front', after: 'h1' },
  ]);
});

test('a hole is drawn between two that follow each other; after the last of a loop there is no between', () => {
  expect(menuOf(['h1']).of('Draw a new hole after it')).toMatchObject({
    act: { do: 'take', instrument: 'draw hole', select: { hole: 'h1', also: ['h2'] } },
  });
  expect(menuOf(['h2']).of('Draw a new hole after it')).toMatchObject({ why: expect.stringContaining('last') });
});

test('a new verdict keeps the reason that was given', () => {
  const verdicts = menuOf(['h1'], { verdict: 'sound', verdictReason: 'the dune' }).of('Verdict …');
  if (!('inside' in verdicts)) throw new Error('no list');
  expect(verdicts.inside.flatMap((entry) => editOf(entry) ?? entry.title)).toEqual([
    expect.objectContaining({ verdict: 'undecided', reason: 'the dune' }),
    expect.objectContaining({ verdict: 'keeper', reason: 'the dune' }),
    'sound',
    expect.objectContaining({ verdict: 'weak', reason: 'the dune' }),
  ]);
});

test('the last hole of a loop says why the loop cannot be split after it', () => {
  expect(editOf(menuOf(['h1']).of('Split the loop after it'))).toMatchObject({
    after: 'h1',
    as: { name: 'A', base: 'house' },
  });
  expect(menuOf(['h2']).of('Split the loop after it')).toMatchObject({ why: expect.stringContaining('last') });
});

test('a stated relation can be taken back', () => {
  const menu = menuOf(['h1'], { relations: [{ kind: 'crosses on purpose', hole: 'h2' }] });
  expect(editOf(menu.of('No longer: crosses on purpose hole 2'))).toMatchObject({ edit: 'unrelate' });
});

test('several holes are turned, pinned and judged in one step each', () => {
  const { of } = menuOf(['h1', 'h2']);
  expect(editOf(of('Reverse each of them'))).toMatchObject({ edit: 'several', does: 'reverse 2 holes' });
  expect(editOf(of('Pin all their parts'))).toMatchObject({ edit: 'several', edits: { length: 4 } });
  expect(editOf(of('Exchange corridors of 1 and 2'))).toMatchObject({ edit: 'exchange corridors', with: 'h2' });
  expect(editOf(of('keeper'))).toEqual(expect.objectContaining({ edit: 'judge', hole: 'h2' }));
});
