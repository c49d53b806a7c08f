import type { Plan, Ring } from '@loopwright/model';
import { expect, test } from 'vitest';
import { openViewpoint } from '../../drawing/viewpoint.ts';
import type { Frame } from '../../live/frame.ts';
import { openSlot } from '../../live/slot.ts';
import { ANALYSIS, PLAN, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { openSnap } from './open-snap.ts';

const at = (x: number, y: number) => ({ x, y });
const OUTLINE: Ring = [at(-900, -900), at(-500, -900), at(-500, -700)];
const bounded: Plan = {
  ...PLAN,
  site: { ...PLAN.site, boundary: { outlines: [OUTLINE], inner: [], tolerance: 0 } },
};

/** @param written  what is on the board, while `bounded` is shown to everybody */
function snapOver(written: Plan) {
  const frame: Frame = { plan: bounded, routing: ROUTING, analysis: ANALYSIS, drags: [], mineInHand: false };
  return openSnap({
    session: { frame: openSlot<Frame | undefined>(frame), writtenPlan: openSlot(written) },
    viewpoint: openViewpoint(),
    reading: openSlot({ units: 'metres', teeSet: 'back' }),
    isOff: () => false,
  });
}

test('a vertex is pulled to a corner of the boundary that is there', () => {
  expect(snapOver(bounded)(at(-503, -700), { for: 'vertex' })).toMatchObject({
    at: at(-500, -700),
    because: 'a corner of the boundary',
  });
});

test('an outline that is only being drawn does not pull at its own next corner', () => {
  expect(snapOver(PLAN)(at(-503, -700), { for: 'vertex' })).toEqual({ at: at(-503, -700) });
});
