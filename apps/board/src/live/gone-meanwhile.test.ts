import type { NamedEdit } from '@loopwright/document';
import type { Plan } from '@loopwright/model';
import { expect, test } from 'vitest';
import { PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { goneHoleOf, letGoWords } from './gone-meanwhile.ts';

const holes = ROUTING.holes.map((hole) =>
  hole.id === 'h2' ? { ...hole, seat: { in: 'removed', key: 'a' } as const } : hole,
);
const loops = ROUTING.loops.map((loop) => ({ ...loop, holes: ['h1'] }));
const without: Plan = { ...PLAN, routings: [{ ...ROUTING, holes, loops }] };
const by = { x: 5, y: 0 };
const drag: NamedEdit = { edit: 'move holes', routing: 'a', holes: ['h1', 'h2'], by };

test('a drag of a hole that was removed is let go, with the number it had and the name of the only other person', () => {
  const gone = goneHoleOf(drag, without);
  expect(gone?.hole).toBe('h2');
  if (!gone) return;
  expect(letGoWords(gone, PLAN, [{ name: 'Ann' }])).toBe('Hole 2 was removed by Ann meanwhile; your drag was let go.');
  expect(letGoWords(gone, PLAN, [{ name: 'Ann' }, { name: 'Bo' }])).toContain('by somebody else');
});

test('a hole that is there, or is only being drawn, is not gone', () => {
  expect(goneHoleOf(drag, PLAN)).toBeUndefined();
  const drawn: NamedEdit = {
    edit: 'draw hole',
    routing: 'a',
    hole: 'new',
    seat: 'spare',
    tees: {},
    turnPoints: [],
  };
  expect(goneHoleOf(drawn, without)).toBeUndefined();
});
