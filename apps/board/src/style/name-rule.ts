import { LIMITS, parseName } from '@loopwright/model';

/** Takes a name that is not empty; answers what is wrong with one in which nothing can be seen. */
export function takeName(typed: string, take: (name: string) => void): string | undefined {
  const name = parseName(typed, LIMITS.name);
  if (name === undefined) return 'It needs a name.';
  take(name);
  return undefined;
}
