import { expect, test } from 'vitest';
import { tableLines } from './table.ts';
import { hanging, wrapped } from './wrapped.ts';

test('columns line up on their side, whatever the letters', () => {
  const lines = tableLines(
    [
      { heading: 'Hole', align: 'right' },
      { heading: 'Bend', align: 'left' },
    ],
    [['1', 'left 12°'], 'rule', ['18', '–']],
  );
  expect(lines).toEqual(['Hole  Bend', '──────────────', '   1  left 12°', '──────────────', '  18  –']);
});

test('text is broken between words and hangs behind its mark', () => {
  expect(wrapped('the walk from 3 to 4 is long', 12)).toEqual(['the walk', 'from 3 to 4', 'is long']);
  expect(hanging('  · ', 'the walk from 3 to 4 is long', 26)).toEqual(['  · the walk from 3 to 4', '    is long']);
  expect(hanging('  · ', '', 26)).toEqual(['  · ']);
});
