import { openPlan } from '@loopwright/document';
import { expect, test } from 'vitest';
import { PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { editOfLoopAction, type LoopAction, nextLoopName } from './loop-actions.ts';

function ids() {
  let count = 0;
  return (letter: string) => `${letter}new${count++}`;
}

/** The sample with keys that a document takes. */
const KEYS: Readonly<Record<string, string>> = { h1: 'a0', h2: 'a1', s1: 'a0' };
const HOLES = ROUTING.holes.map((hole) => ({ ...hole, seat: { ...hole.seat, key: KEYS[hole.id] ?? 'a2' } }));
const SAMPLE = { ...PLAN, routings: [{ ...ROUTING, holes: HOLES }] };

/** The loops of the sample after an action on its only loop. */
function after(action: LoopAction) {
  const board = openPlan();
  board.edit({ edit: 'lay out plan', plan: SAMPLE });
  const edit = editOfLoopAction(ROUTING, 'front', action, ids());
  const result = edit && board.edit(edit);
  const routing = board.read().routings[0];
  return { result, loops: routing?.loops.map(({ name, holes }) => [name, holes.length]), routing };
}

test('a loop is split after a hole, and the second part takes the next letter and the same base', () => {
  const { loops, routing } = after({ do: 'split', after: 'h1' });
  expect(loops).toEqual([
    ['Front nine', 1],
    ['A', 1],
  ]);
  expect(routing?.loops.map(({ base }) => base)).toEqual(['house', 'house']);
});

test('a copy has its holes again; reversing plays them the other way round; removing sends them to the tray', () => {
  expect(after({ do: 'copy' }).loops).toEqual([
    ['Front nine', 2],
    ['A', 2],
  ]);
  expect(after({ do: 'reverse' }).routing?.loops[0]?.holes).toEqual(['h2', 'h1']);
  expect(after({ do: 'remove' }).routing?.spare).toEqual(['s1', 'h1', 'h2']);
});

test('a loop is renamed and freed of its base in one step; the same name and base are no step', () => {
  expect(after({ do: 'change', name: 'Out', base: null }).routing?.loops[0]).toMatchObject({ name: 'Out' });
  expect(after({ do: 'change', name: 'Front nine', base: 'house' }).result).toBeUndefined();
});

test('there is nothing to join the last loop with', () => {
  expect(after({ do: 'join' }).result).toBeUndefined();
  expect(nextLoopName({ loops: [{ id: 'x', name: 'a', holes: [] }] })).toBe('B');
});
