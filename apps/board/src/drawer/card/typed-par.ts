import type { ParChoice } from '@loopwright/model';

/** What somebody typed for a par. */
export type TypedPar =
  | { readonly kind: 'par'; readonly par: ParChoice }
  | { readonly kind: 'wrong'; readonly why: string };

const PARS: Readonly<Record<string, ParChoice>> = { '': 'by length', 'by length': 'by length', 3: 3, 4: 4, 5: 5, 6: 6 };

/** A typed par: 3 to 6, or nothing to let it follow the length. */
export function typedPar(typed: string): TypedPar {
  const par = PARS[typed.trim().toLocaleLowerCase('en')];
  if (par !== undefined) return { kind: 'par', par };
  return { kind: 'wrong', why: 'A par is 3, 4, 5 or 6. Left empty it follows the length.' };
}
