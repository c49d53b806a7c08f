import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { shiftedHole } from './move-hole.ts';
import { openHole } from './open-hole.ts';

/**
 * Shifts several holes together, each as `move hole` does. Those that somebody took off the plan meanwhile are left out.
 *
 * @returns `gone` when none of them is there any more; `nothing` when a part of any would leave the site plane
 */
export function moveHoles(edit: EditNamed<'move holes'>, reading: Reading): EditWrites {
  const writes: Write[] = [];
  let answer: EditWrites = 'gone';
  for (const hole of new Set(edit.holes)) {
    const open = openHole(reading, { routing: edit.routing, hole });
    if (open === 'nothing') return 'nothing';
    if (open === 'gone') continue;
    const shifted = shiftedHole(open, reading, edit.by);
    if (shifted === undefined) return 'nothing';
    writes.push(...shifted);
    answer = writes;
  }
  return answer;
}
