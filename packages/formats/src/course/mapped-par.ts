import type { ParChoice } from '@loopwright/model';
import type { Tags } from '../geojson/element.ts';
import type { NoteBook } from '../note.ts';

const PARS: ReadonlyMap<string, ParChoice> = new Map([
  ['3', 3],
  ['4', 4],
  ['5', 5],
  ['6', 6],
]);

/**
 * The par a hole is tagged with, for men and women alike unless a women's par is tagged; else by length, with a note.
 *
 * One par for all tees is what the Rules of Handicapping recommend (R&A/USGA, Appendix F).
 */
export function mappedPar(tags: Tags, about: string, notes: NoteBook): { men: ParChoice; women: ParChoice } {
  const men = PARS.get(tags.par ?? '') ?? PARS.get(tags['par:men'] ?? '');
  const women = PARS.get(tags['par:women'] ?? '') ?? men;
  if (men === undefined)
    notes.add(
      tags.par === undefined
        ? 'No par is mapped: it follows from the length.'
        : `Its par is mapped as '${tags.par}': it follows from the length instead.`,
      about,
    );
  return { men: men ?? 'by length', women: women ?? 'by length' };
}
