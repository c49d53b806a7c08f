import { expect, test } from 'vitest';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import { startNorth } from './start-north.ts';

test('a line to the upper right says that north is an eighth of a turn clockwise', () => {
  const { bench, written, isAway } = openFakeBench();
  const running = startNorth(bench);
  running.press(mouseAt(0, 0), undefined)?.end(mouseAt(0, 0));
  running.hover(mouseAt(50, 50));
  expect(running.picture.get().atPointer).toEqual(['north 45° clockwise from the top']);
  running.press(mouseAt(100, 100), undefined);
  expect(written).toEqual([{ edit: 'set north', north: 0.785398 }]); // π/4, to 1e-6
  expect(isAway()).toBe(true);
});

test('degrees may be typed; what is none is said', () => {
  const { bench, written } = openFakeBench();
  expect(startNorth(bench).enter?.('-90')).toBeUndefined();
  expect(written).toEqual([{ edit: 'set north', north: (270 * Math.PI) / 180 }]);
  for (const odd of ['', 'up', '361', '1e3', '9'.repeat(400)])
    expect(startNorth(bench).enter?.(odd)).toContain('degrees');
});

test('two equal points give no north, and Esc leaves the plan as it was', () => {
  const { bench, said, shown, written } = openFakeBench();
  const running = startNorth(bench);
  running.press(mouseAt(0, 0), undefined);
  running.press(mouseAt(3, 3), undefined);
  expect(said.at(-1)).toContain('same place');
  running.hover(mouseAt(0, 200));
  expect(shown()).toEqual({ edit: 'set north', north: 0 });
  expect(running.letGo()).toBe(true);
  expect([shown(), written]).toEqual([undefined, []]);
});
