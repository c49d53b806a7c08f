import type { Base } from '@loopwright/model';
import { expect, test } from 'vitest';
import { openSlot } from '../../live/slot.ts';
import { PLAN } from '../../reading/two-holes.test-plan.ts';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import type { Running } from '../instrument.ts';
import { type BasePart, startBase } from './start-base.ts';

const press = (running: Running, x: number, y: number) => running.press(mouseAt(x, y), undefined)?.end(mouseAt(x, y));

test('the apron is one press and one step, then footprints of that base are drawn', () => {
  const { bench, written } = openFakeBench();
  const choice = { part: openSlot<BasePart>('apron'), base: openSlot<string | undefined>(undefined) };
  const running = startBase(bench, choice);
  press(running, 40, 50);
  expect(written).toMatchObject([
    { edit: 'add base', base: { name: 'Base 2', apron: { x: 40, y: 50 }, footprints: [] } },
  ]);
  expect(choice.part.get()).toBe('footprint');
});

test('a footprint is added to those the base has, and Esc leaves it as it was', () => {
  const { bench, written, shown } = openFakeBench();
  const choice = { part: openSlot<BasePart>('footprint'), base: openSlot<string | undefined>('house') };
  const running = startBase(bench, choice);
  expect(running.prompt.get()).toMatch(/footprint of Clubhouse/);
  press(running, 0, 0);
  press(running, 20, 0);
  expect(running.letGo()).toBe(true);
  expect(shown()).toBeUndefined();
  for (const [x, y] of [
    [0, 0],
    [20, 0],
    [20, 12],
  ] as const)
    press(running, x, y);
  running.finish?.();
  expect(written).toEqual([
    {
      edit: 'change base',
      base: 'house',
      to: {
        footprints: [
          [
            { x: 0, y: 0 },
            { x: 20, y: 0 },
            { x: 20, y: 12 },
          ],
        ],
      },
    },
  ]);
});

test('a base that somebody removed meanwhile: the next press puts a new one down', () => {
  const bases: readonly Base[] = [];
  const { bench } = openFakeBench({ plan: { ...PLAN, site: { ...PLAN.site, bases } } });
  const running = startBase(bench, {
    part: openSlot<BasePart>('footprint'),
    base: openSlot<string | undefined>('house'),
  });
  expect(running.prompt.get()).toMatch(/where golfers gather/);
});
