import { expect, test } from 'vitest';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import { startMeasure } from './start-measure.ts';

const at = (x: number, y: number) => ({ x, y });
const sketch = (shape: object) => ({
  edit: 'add sketch',
  sketch: { id: 'k101', shape, by: 'Ann', ink: 2, kept: false },
});

test('a line is shown to everybody while it is laid, and written once when it is all', () => {
  const { bench, written, shown } = openFakeBench();
  const running = startMeasure('measured line', bench);
  running.press(mouseAt(0, 0), undefined);
  running.hover(mouseAt(0, 100));
  expect(shown()).toEqual(sketch({ kind: 'measured line', points: [at(0, 0), at(0, 100)] }));
  expect(running.picture.get().atPointer).toEqual(['100 m, bearing 000°']);
  running.press(mouseAt(0, 100), undefined);
  running.hover(mouseAt(30, 140));
  expect(running.picture.get().atPointer).toEqual(['50 m, bearing 037°', '150 m in all']);
  expect(written).toEqual([]);
  running.finish?.();
  // What only follows the pointer is not part of it.
  expect(written).toEqual([sketch({ kind: 'measured line', points: [at(0, 0), at(0, 100)] })]);
  expect(shown()).toBeUndefined();
});

test('an area is closed by a press on its first corner, and says what lies in it', () => {
  const { bench, written } = openFakeBench();
  const running = startMeasure('measured area', bench);
  for (const [x, y] of [
    [0, 0],
    [200, 0],
    [200, 100],
  ] as const)
    running.press(mouseAt(x, y), undefined);
  running.hover(mouseAt(0, 100));
  expect(running.picture.get().atPointer).toEqual(['200 m, bearing 270°', '2.00 ha, 600 m around']);
  running.press(mouseAt(0, 100), undefined);
  running.press(mouseAt(3, 4), undefined);
  const ring = [at(0, 0), at(200, 0), at(200, 100), at(0, 100)];
  expect(written).toEqual([sketch({ kind: 'measured area', ring })]);
});

test('a typed length lays the leg towards the pointer, a typed bearing that way', () => {
  const { bench, written } = openFakeBench();
  const running = startMeasure('measured line', bench);
  expect(running.enter?.('10, 20')).toBeUndefined();
  expect(running.enter?.('50')).toMatch(/Point where/);
  running.hover(mouseAt(10, 300));
  expect(running.enter?.('50')).toBeUndefined();
  expect(running.enter?.('30 @ 90')).toBeUndefined();
  expect(running.enter?.('thirty')).toMatch(/no length/);
  running.finish?.();
  const [step] = written;
  const points = step?.edit === 'add sketch' && 'points' in step.sketch.shape ? step.sketch.shape.points : [];
  expect(points).toHaveLength(3);
  expect(points[1]).toEqual(at(10, 70));
  expect(points[2]?.x).toBeCloseTo(40, 9);
  expect(points[2]?.y).toBeCloseTo(70, 9);
});

test('a finger carries the point it has placed; a press that is taken away places nothing', () => {
  const { bench, shown } = openFakeBench();
  const running = startMeasure('measured line', bench);
  running.press(mouseAt(0, 0), undefined);
  const carried = running.press(mouseAt(50, 0), undefined);
  carried?.move(mouseAt(80, 0));
  expect(shown()).toEqual(sketch({ kind: 'measured line', points: [at(0, 0), at(80, 0)] }));
  carried?.cancel();
  expect(shown()).toBeUndefined();
});

test('Backspace takes one point back, Esc the rest; too little to be a line is not written', () => {
  const { bench, written, said, shown } = openFakeBench();
  const running = startMeasure('measured line', bench);
  expect(running.back?.()).toBe(false);
  expect(running.letGo()).toBe(false);
  running.press(mouseAt(0, 0), undefined);
  running.press(mouseAt(50, 0), undefined);
  expect(running.back?.()).toBe(true);
  running.finish?.();
  expect(written).toEqual([]);
  expect(said).toHaveLength(1);
  expect(running.letGo()).toBe(true);
  expect(shown()).toBeUndefined();
});
