import { isolated, withoutIsolation } from './isolated.ts';

/** Characters of a name in a line of words; a plan may hold eighty. */
const MOST = 32;

/** A name as it fits into a line: its end is left out when it is long. Letters of any script stay whole. */
export function shortName(name: string): string {
  const letters = [...withoutIsolation(name)];
  return isolated(
    letters.length <= MOST
      ? letters.join('')
      : `${letters
          .slice(0, MOST - 1)
          .join('')
          .trimEnd()}…`,
  );
}

/** ‘B’: a name in marks, so that it is told from the words around it. */
export function quoted(name: string): string {
  return `‘${shortName(name)}’`;
}
