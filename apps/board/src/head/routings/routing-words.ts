import type { Routing } from '@loopwright/model';

const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];

/** The first letter that no routing goes by yet: what a new one is called unless somebody says otherwise. */
export function nextRoutingName(routings: readonly Pick<Routing, 'name'>[]): string {
  const taken = new Set(routings.map(({ name }) => name.trim().toLocaleUpperCase('en')));
  return LETTERS.find((letter) => !taken.has(letter)) ?? `Routing ${routings.length + 1}`;
}

/** What the head says about a locked routing, wherever somebody asks why nothing moves. */
export const LOCKED_WORDS =
  'This routing is locked, as the existing course: it is there to be looked at, measured and compared. ' +
  'Nothing on it moves, for anybody. Copy it and change the copy; or unlock it in the menu of routings.';

/** How many holes a routing has, for the list: '18 holes, 2 spare'. */
export function holesWords({ loops, spare }: Pick<Routing, 'loops' | 'spare'>): string {
  const played = loops.reduce((sum, { holes }) => sum + holes.length, 0);
  const count = `${played} ${played === 1 ? 'hole' : 'holes'}`;
  return spare.length === 0 ? count : `${count}, ${spare.length} spare`;
}
