import type { Person } from '@loopwright/document';
import { expect, test } from 'vitest';
import { openTurns } from './turns.ts';

const person = (client: number, y: number): Person => ({
  client,
  name: `Guest ${client}`,
  ink: 0,
  selection: [],
  drag: { edit: 'move part', routing: 'r1', hole: `h${client}`, part: 'green', to: { x: 0, y } },
});
const crowd = (size: number, y: number) => Array.from({ length: size }, (_, client) => person(client, y));

test('in a crowd everybody comes through within a few pictures, whoever goes on dragging', () => {
  const turns = openTurns();
  const shown = [crowd(12, 0)];
  for (let tick = 1; tick <= 4; tick++) shown.push([...turns.take(shown.at(-1) ?? [], crowd(12, tick))]);
  const movedOnce = shown.at(-1)?.every(({ client, drag }) => drag !== shown[0]?.[client]?.drag);
  expect(movedOnce).toBe(true);
});

test('once nobody moves any more, everybody is shown as they are', () => {
  const turns = openTurns();
  const last = crowd(12, 1);
  let shown: readonly Person[] = crowd(12, 0);
  for (let picture = 0; picture < 4; picture++) shown = turns.take(shown, last);
  expect(shown).toBe(last);
});

test('who lets go or comes never waits', () => {
  const turns = openTurns();
  const { drag: _, ...letGo } = person(11, 1);
  const now = [...crowd(11, 1), letGo, person(12, 1)];
  const shown = turns.take(crowd(12, 0), now);
  expect(shown.slice(11)).toEqual([letGo, person(12, 1)]);
});
