import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { expect, test } from 'vitest';
import { PLAN } from '../reading/two-holes.test-plan.ts';
import { startOfDay } from './kept-starts.ts';

const named = (name: string) => ({ ...PLAN, site: { ...PLAN.site, name } });
const at = (day: number, hour: number) => new Date(2026, 4, day, hour, 12);

test('the first opening of a day is kept, and is what later ones of that day find', async () => {
  const first = await startOfDay('one', at(4, 8), named('morning'));
  expect(first).toEqual({ at: at(4, 8).getTime(), plan: named('morning') });
  const later = await startOfDay('one', at(4, 17), named('evening'));
  expect(later.at).toBe(at(4, 8).getTime());
  expect(later.plan.site.name).toBe('morning');
});

test('the next day begins anew, and each board has its own', async () => {
  await startOfDay('two', at(4, 8), named('yesterday'));
  expect((await startOfDay('two', at(5, 0), named('today'))).plan.site.name).toBe('today');
  expect((await startOfDay('three', at(5, 9), named('other'))).plan.site.name).toBe('other');
});

test('boards opened longest ago are forgotten', async () => {
  for (let board = 0; board < 30; board++) await startOfDay(`many ${board}`, at(6, board % 24), PLAN);
  const database = await openDB('loopwright day starts');
  expect(await database.count('starts')).toBe(12);
  database.close();
});

test('what was kept and cannot be read is no start', async () => {
  const database = await openDB('loopwright day starts');
  await database.put('starts', { board: 'odd', at: at(7, 8).getTime(), plan: { nonsense: true } });
  database.close();
  expect((await startOfDay('odd', at(7, 9), named('now'))).plan.site.name).toBe('now');
});
