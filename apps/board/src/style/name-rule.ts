/** Takes a name that is not empty; answers what is wrong with an empty one. */
export function takeName(typed: string, take: (name: string) => void): string | undefined {
  const name = typed.trim();
  if (name === '') return 'It needs a name.';
  take(name);
  return undefined;
}
