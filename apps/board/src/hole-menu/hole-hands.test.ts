import type { NamedEdit } from '@loopwright/document';
import { expect, test } from 'vitest';
import type { Selection } from '../board/parts.ts';
import { openSlot } from '../live/slot.ts';
import { ANALYSIS, PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { openHoleHands } from './hole-hands.ts';
import type { HoleAct } from './menu-entry.ts';

function openHands(locked = false) {
  const selection = openSlot<Selection>({});
  const did: unknown[] = [];
  const routing = { ...ROUTING, locked };
  const hands = openHoleHands({
    session: {
      frame: openSlot({ plan: PLAN, routing, analysis: ANALYSIS, drags: [], mineInHand: false }),
      selection,
      select: selection.set,
      edit: (edit) => {
        did.push(edit);
        return 'done';
      },
      say: (words) => did.push(words),
      sayLocked: () => did.push('locked'),
    },
    take: (instrument) => did.push({ take: instrument }),
  });
  return { hands, did, selection };
}

const swap = (other: string): NamedEdit => ({ edit: 'swap places', routing: 'a', hole: 'h1', with: other });
const ask: HoleAct = {
  do: 'ask',
  question: { hole: 'h1', words: 'Which?', choices: [{ hole: 'h2', words: 'Hole 2' }], editFor: swap },
};

test('a question is answered by picking out the other hole, wherever that is done; what was picked out stays', () => {
  const { hands, did, selection } = openHands();
  hands.select({ hole: 'h1' });
  hands.act(ask);
  expect(hands.picks()).toBe(true);
  hands.select({ hole: 'h2' });
  expect(did).toEqual([swap('h2')]);
  expect(selection.get()).toEqual({ hole: 'h1' });
  expect(hands.picks()).toBe(false);
});

test('the hole itself, or one that cannot be it, is no answer: the question stays', () => {
  const { hands, did } = openHands();
  hands.act(ask);
  hands.select({ hole: 'h1' });
  hands.select({ hole: 's1' });
  expect(did).toEqual([expect.stringContaining('same hole'), expect.stringContaining('cannot be it')]);
  expect(hands.picks()).toBe(true);
  expect([hands.letGo(), hands.letGo()]).toEqual([true, false]);
});

test('while several are picked out each press adds or takes one, and bare paper lets nothing go', () => {
  const { hands, selection } = openHands();
  hands.select({ hole: 'h1' });
  hands.act({ do: 'choose several', hole: 'h1' });
  hands.select({ hole: 'h2' });
  hands.select({});
  expect(selection.get()).toEqual({ hole: 'h2', also: ['h1'] });
  hands.select({ hole: 'h1' });
  expect(selection.get()).toEqual({ hole: 'h2' });
});

test('on a locked routing nothing is asked or done, and it says so; several can be picked out', () => {
  const { hands, did } = openHands(true);
  for (const act of [ask, { do: 'lengthen', hole: 'h1' } as const, { do: 'edit', edit: swap('h2') } as const])
    hands.act(act);
  expect(did).toEqual(['locked', 'locked', 'locked']);
  expect(hands.picks()).toBe(false);
});

test('the menu is for what is picked out, with the hole under the pointer; bare paper has none', () => {
  const { hands, selection } = openHands();
  hands.open({ x: 5, y: 5 });
  expect(hands.menu.get()).toBeUndefined();
  hands.select({ hole: 'h1', also: ['h2'] });
  hands.open({ x: 5, y: 5 }, { hole: 'h2' });
  expect(selection.get()).toEqual({ hole: 'h1', also: ['h2'] });
  hands.open({ x: 5, y: 5 }, { hole: 's1', part: 'green' });
  expect(selection.get()).toEqual({ hole: 's1' });
  expect(hands.menu.get()).toEqual({ at: { x: 5, y: 5 }, part: 'green' });
});
