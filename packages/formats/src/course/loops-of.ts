import { grouped } from '../grouped.ts';
import type { NoteBook } from '../note.ts';
import type { HoleInHand } from './hole-in-hand.ts';
import type { NumberedGroup, NumberedHoles } from './number-holes.ts';

export interface LoopInHand {
  readonly id: string;
  readonly name: string;
  readonly holes: readonly HoleInHand[];
}

export interface LoopsInHand {
  readonly loops: readonly LoopInHand[];
  readonly rounds: readonly { readonly id: string; readonly name: string; readonly loops: readonly string[] }[];
  readonly spare: readonly HoleInHand[];
}

const NINE = 9;
/** A part of a nine beyond the second with fewer holes than this is no loop (a nineteenth hole, a spare one). */
const SMALLEST_LOOP = 3;

/** Loops of nine by number, one set for each group of numbers, and the rounds they are played in. */
export function loopsOf(numbered: NumberedHoles, notes: NoteBook): LoopsInHand {
  const spare = [...numbered.spare];
  const sets = numbered.groups.map((group) => {
    const nines = ninesOf(group).filter(({ holes }, index) => {
      if (index < 2 || holes.length >= SMALLEST_LOOP) return true;
      notes.add('Holes beyond the last full nine are in the spare tray.');
      spare.push(...holes);
      return false;
    });
    return { group: group.group, nines };
  });
  const total = sets.reduce((sum, { nines }) => sum + nines.length, 0);
  const named = sets.map(({ group, nines }) =>
    nines.map(({ holes }, index) => ({ name: nameOf(group, index, nines.length, total), holes })),
  );
  const loops = named.flat().map(({ name, holes }, index) => ({ id: `loop-${index + 1}`, name, holes }));
  return {
    loops,
    rounds: roundsOf(
      loops,
      named.map((set) => set.length),
    ),
    spare,
  };
}

function ninesOf({ holes }: NumberedGroup): readonly { readonly holes: readonly HoleInHand[] }[] {
  const nines = grouped(holes, ({ number }) => Math.ceil(number / NINE));
  return [...nines].sort(([a], [b]) => a - b).map(([, members]) => ({ holes: members.map(({ hole }) => hole) }));
}

function nameOf(group: string, index: number, ofGroup: number, total: number): string {
  const title = group.length > 1 ? group.charAt(0) + group.slice(1).toLowerCase() : group;
  if (total === 1) return group === '' ? 'Round' : title;
  const part = ofGroup === 2 ? (index === 0 ? 'Out' : 'In') : String.fromCharCode(65 + index);
  if (group === '') return part;
  return ofGroup === 1 ? title : `${title} ${part.toLowerCase()}`;
}

/** Two loops make a round; three make three (A + B, B + C, C + A); more are paired in order. */
function roundsOf(loops: readonly LoopInHand[], sizes: readonly number[]): LoopsInHand['rounds'] {
  const pairs: (readonly LoopInHand[])[] = [];
  if (loops.length === 3) {
    pairs.push(...loops.map((loop, index) => [loop, loops[(index + 1) % 3] ?? loop]));
  } else {
    const sets = sizes.every((size) => size === 1) ? [loops.length] : sizes;
    let from = 0;
    for (const size of sets) {
      for (let i = from; i < from + size; i += 2) pairs.push(loops.slice(i, Math.min(i + 2, from + size)));
      from += size;
    }
  }
  return pairs.map((pair, index) => ({
    id: `round-${index + 1}`,
    name: pairs.length === 1 ? 'Round' : pair.map(({ name }) => name).join(' + '),
    loops: pair.map(({ id }) => id),
  }));
}
