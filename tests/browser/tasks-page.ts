// The counts written in apps/board/TASKS.md, so that the tests can hold the page to them.
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect } from 'vitest';

export type By = 'mouse' | 'touch' | 'keyboard';

const PAGE = resolve(import.meta.dirname, '../../apps/board/TASKS.md');
const COLUMNS: readonly By[] = ['mouse', 'touch', 'keyboard'];

/** A task took this many actions: no more than the page says. With `TASKS=1` the count is said. */
export function expectTask(task: string, by: By, count: number): void {
  if (process.env.TASKS) process.stdout.write(`${task} by ${by}: ${count}\n`);
  const most = written(task, by);
  expect(count, `${task} by ${by}: apps/board/TASKS.md says ${most}`).toBeLessThanOrEqual(most);
}

function written(task: string, by: By): number {
  const rows = readFileSync(PAGE, 'utf8')
    .split('\n')
    .map((line) => line.split('|').map((cell) => cell.trim()));
  const row = rows.find(([, words]) => words?.startsWith(task));
  const figure = Number(row?.[2 + COLUMNS.indexOf(by)] || Number.NaN);
  if (Number.isNaN(figure)) throw new Error(`apps/board/TASKS.md has no count of '${task}' by ${by}`);
  return figure;
}
