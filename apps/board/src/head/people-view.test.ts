import { expect, test } from 'vitest';
import { toPeople } from './people-view.ts';

const person = (client: number, name: string) => ({ client, name, ink: client, selection: [] });

test('I stand first, the others in the order of their pages', () => {
  const { shown, more } = toPeople({ name: 'Ann', ink: 0 }, [person(7, 'Jo'), person(3, 'Rees')]);
  expect(shown.map(({ initials }) => initials)).toEqual(['AN', 'RE', 'JO']);
  expect(more).toBe('');
});

test('a crowd is counted after the sixth', () => {
  const crowd = Array.from({ length: 8 }, (_, index) => person(index, `P${index}`));
  const { shown, more, all } = toPeople({ name: 'Ann', ink: 0 }, crowd);
  expect([shown.length, more, all.length]).toEqual([6, '+3', 9]);
});
