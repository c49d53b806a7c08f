import type { Sketch, SketchId } from '@loopwright/model';
import type { Me } from '../../board/parts.ts';
import type { Bench } from '../instrument.ts';

export type Whose = 'mine' | 'everybody';

/**
 * Sketches that may be wiped at once: those not kept, of one person or of all. A person is who calls themselves so: their
 * ink may be another each time they come.
 */
export function wipeable(sketches: readonly Sketch[], whose: Whose, me: Pick<Me, 'name'>): readonly SketchId[] {
  return sketches.filter(({ kept, by }) => !kept && (whose === 'everybody' || by === me.name)).map(({ id }) => id);
}

/** Wipes them in one step, and says how many there were. */
export function wipe(bench: Bench, whose: Whose): void {
  const sketches = wipeable(bench.plan().site.sketches ?? [], whose, bench.me());
  if (sketches.length > 0) bench.edit({ edit: 'wipe sketches', sketches });
  bench.say(wipedWords(sketches.length, whose));
}

function wipedWords(count: number, whose: Whose): string {
  const owner = whose === 'mine' ? 'of yours ' : '';
  if (count === 0) return `No sketch ${owner}to wipe: kept ones stay.`;
  return `${count === 1 ? 'One sketch' : `${count} sketches`} ${owner}wiped. Undo brings them back.`;
}
