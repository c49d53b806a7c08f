import { expect, test } from 'vitest';
import { LIMITS, laidHole } from './laid-hole.ts';
import { checkLinesCross } from './lines-cross.ts';

const north = laidHole('a', [
  [0, 0],
  [0, 400],
]);

test('lines that cross are a stop, measured by the nearest way out of it', () => {
  const across = laidHole('b', [
    [-200, 150],
    [200, 150],
  ]);
  const [finding, ...more] = checkLinesCross(north, across, LIMITS);
  // 150 m back for the tee of a; 250 for its green; 200 for either end of b.
  expect(finding).toMatchObject({ code: 'lines-cross', severity: 'stop', measured: -150, limit: 0, safety: true });
  expect(finding?.place).toEqual({ type: 'point', at: { x: 0, y: 150 } });
  expect(finding?.detail).toMatchObject({ aheadFirst: 150, aheadSecond: 200 });
  expect(more).toEqual([]);
});

test('a line that ends a metre short of another does not cross it', () => {
  expect(
    checkLinesCross(
      north,
      laidHole('b', [
        [-200, 150],
        [-1, 150],
      ]),
      LIMITS,
    ),
  ).toEqual([]);
});

test('a crossing on purpose is shown as stated', () => {
  const relations = [{ kind: 'crosses on purpose', hole: 'a' }] as const;
  const across = laidHole(
    'b',
    [
      [-200, 150],
      [200, 150],
    ],
    { relations },
  );
  const [finding] = checkLinesCross(north, across, LIMITS);
  expect(finding).toMatchObject({ severity: 'mention', safety: true, detail: { stated: 'crosses on purpose' } });
});

test('holes that share their green may meet at it, and nowhere else', () => {
  const relations = [{ kind: 'shares its green with', hole: 'a' }] as const;
  expect(
    checkLinesCross(
      north,
      laidHole(
        'b',
        [
          [-200, 380],
          [10, 400],
        ],
        { relations },
      ),
      LIMITS,
    ),
  ).toEqual([]);
  expect(
    checkLinesCross(
      north,
      laidHole(
        'b',
        [
          [-200, 150],
          [200, 150],
        ],
        { relations },
      ),
      LIMITS,
    ),
  ).toHaveLength(1);
});
