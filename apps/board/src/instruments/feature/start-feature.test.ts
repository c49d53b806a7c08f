import { expect, test } from 'vitest';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import type { Running } from '../instrument.ts';
import { chooseKind, openFeatureChoice } from './feature-choice.ts';
import { startFeature } from './start-feature.ts';

const press = (running: Running, x: number, y: number) => running.press(mouseAt(x, y), undefined)?.end(mouseAt(x, y));

test('a pond is an area, and allows what its kind does until somebody says else', () => {
  const { bench, written, shown } = openFakeBench();
  const running = startFeature(bench, openFeatureChoice());
  for (const [x, y] of [
    [0, 0],
    [60, 0],
    [60, 40],
  ] as const)
    press(running, x, y);
  expect(shown()?.edit).toBe('add features');
  running.finish?.();
  expect(written).toMatchObject([
    { features: [{ kind: 'water', buffer: 0, allows: { carry: true, walk: false, mow: false, build: false } }] },
  ]);
  expect(bench.selection().thing?.kind).toBe('feature');
});

test('a road is a line, a landmark one press; two features have two ids', () => {
  const { bench, written } = openFakeBench();
  const choice = openFeatureChoice();
  const running = startFeature(bench, choice);
  chooseKind(choice, 'public road');
  running.refresh();
  expect(running.prompt.get()).toMatch(/^Public road: press where the line begins/);
  press(running, 0, 0);
  press(running, 100, 5);
  running.finish?.();
  chooseKind(choice, 'landmark');
  running.refresh();
  press(running, 7, 8);
  expect(written).toMatchObject([
    { features: [{ kind: 'public road', geometry: { type: 'line', points: [{}, {}] } }] },
    { features: [{ kind: 'landmark', geometry: { type: 'point', at: { x: 7, y: 8 } } }] },
  ]);
  const ids = written.flatMap((edit) => (edit.edit === 'add features' ? edit.features.map(({ id }) => id) : []));
  expect(new Set(ids).size).toBe(2);
});

test('half an outline becomes half a line when it is to be a line, and is put back when it is to be a point', () => {
  const { bench, shown } = openFakeBench();
  const choice = openFeatureChoice();
  const running = startFeature(bench, choice);
  press(running, 0, 0);
  press(running, 50, 0);
  choice.form.set('line');
  running.refresh();
  expect(shown()).toMatchObject({ features: [{ geometry: { type: 'line' } }] });
  choice.form.set('point');
  running.refresh();
  expect(shown()).toBeUndefined();
});
