import { expect, test } from 'vitest';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import { openMarkChoice, startSiteMark } from './start-site-mark.ts';

test('each press is one mark of the chosen kind, and the instrument stays in the hand', () => {
  const { bench, written, shown, isAway } = openFakeBench();
  const choice = openMarkChoice();
  const running = startSiteMark(bench, choice);
  const press = running.press(mouseAt(10, 20), undefined);
  expect(shown()).toMatchObject({ edit: 'add mark', mark: { at: { x: 10, y: 20 } } });
  press?.end(mouseAt(10, 20));
  choice.kind.set('landing ground');
  choice.verdict.set('needs work');
  running.press(mouseAt(30.00049, 40), undefined)?.end(mouseAt(30, 40));
  expect(written).toMatchObject([
    { mark: { kind: 'green site', verdict: 'natural', at: { x: 10, y: 20 } } },
    { mark: { kind: 'landing ground', verdict: 'needs work', at: { x: 30, y: 40 } } },
  ]);
  expect(bench.selection().thing?.kind).toBe('mark');
  expect(isAway()).toBe(false);
});

test('a press that moves on carries the mark along; one that is taken away leaves none', () => {
  const { bench, written, shown } = openFakeBench();
  const running = startSiteMark(bench, openMarkChoice());
  const carried = running.press(mouseAt(0, 0), undefined);
  carried?.move(mouseAt(50, 60));
  carried?.end(mouseAt(50, 60));
  expect(written).toMatchObject([{ mark: { at: { x: 50, y: 60 } } }]);
  running.press(mouseAt(5, 5), undefined)?.cancel();
  expect(shown()).toBeUndefined();
  expect(written).toHaveLength(1);
});

test('a mark is typed by its coordinates', () => {
  const { bench, written } = openFakeBench();
  const running = startSiteMark(bench, openMarkChoice());
  expect(running.enter?.('380')).toMatch(/lies at a place/);
  expect(running.enter?.('12.5, -7')).toBeUndefined();
  expect(written).toMatchObject([{ mark: { at: { x: 12.5, y: -7 } } }]);
});
