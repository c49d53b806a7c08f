import { openPlan } from '@loopwright/document';
import { type Plan, seededRandom } from '@loopwright/model';
import { expect, test } from 'vitest';
import { randomEdit } from './random-edit.ts';

/** An empty board with two loops, on which everything is still to be drawn. */
const START: Plan = {
  loopwright: 1,
  site: { name: 'Invented site', north: 0, bases: [], marks: [], features: [], images: [] },
  teeSets: [
    { id: 'back', name: 'Back', player: 'scratch man' },
    { id: 'forward', name: 'Forward', player: 'bogey woman' },
  ],
  routings: [
    {
      id: 'a',
      name: 'A',
      locked: false,
      loops: [
        { id: 'out', name: 'Out', holes: ['h1'] },
        { id: 'in', name: 'In', holes: [] },
      ],
      rounds: [{ id: 'main', name: 'Main', loops: ['out', 'in'] }],
      holes: [
        {
          id: 'h1',
          seat: { in: 'loop', loop: 'out', key: 'a0' },
          tees: {},
          turnPoints: [],
          par: { men: 'by length', women: 'by length' },
          verdict: 'undecided',
          pinned: [],
          waypoints: [],
          relations: [],
        },
      ],
      spare: [],
    },
  ],
  settings: {},
  dispositions: [],
};

test('a long evening of random edits does every kind of thing to holes, loops, routings and the land', () => {
  const random = seededRandom(5);
  const plan = openPlan();
  plan.edit({ edit: 'lay out plan', plan: START });
  const answers = new Map<string, Set<string>>();
  for (let i = 0; i < 4000; i++) {
    const edit = randomEdit(plan.read(), random);
    if (!edit) continue;
    answers.set(edit.edit, (answers.get(edit.edit) ?? new Set()).add(plan.edit(edit)));
  }
  const neverDone = [...answers].filter(([, results]) => !results.has('done')).map(([name]) => name);
  expect(neverDone).toEqual([]);
  expect(answers.size).toBeGreaterThanOrEqual(50);
});
