import { type Cells, valueAt, type Write } from './cells.ts';
import { isSameValue } from './plain-value.ts';
import type { Root } from './roots.ts';

/** One key as an edit found it and left it. */
export interface KeyChange {
  readonly at: Omit<Write, 'value'>;
  readonly before: unknown;
  readonly after: unknown;
}

/** Collections whose groups begin with the routing they belong to. */
const OF_A_ROUTING: readonly Root[] = ['loops', 'rounds', 'holes', 'dispositions'];

/**
 * Which keys of a step belong to a hole or a routing that the step made, and on which others have worked since: one of
 * its parts does not stand as the step left it.
 *
 * Cost: O(keys of what was made).
 */
export function takenUpBy(
  { changes }: { readonly changes: readonly KeyChange[] },
  cells: Cells,
): (at: Omit<Write, 'value'>) => boolean {
  const made = changes.filter(({ at, before }) => at.part === 'seat' && before === null);
  const routings = made.flatMap(({ at }) => (at.root === 'routings' ? [at.group] : []));
  const holes = made.flatMap(({ at }) => (at.root === 'holes' ? [at.group] : []));
  if (routings.length + holes.length === 0) return () => false;
  const left = new Map(changes.map(({ at, after }) => [nameOf(at), after]));
  const stands = (root: Root, group: string): boolean => {
    for (const part of cells[root].get(group)?.keys() ?? []) {
      const at = { root, group, part };
      if (!isSameValue(valueAt(cells, at), left.get(nameOf(at)) ?? null)) return false;
    }
    return true;
  };
  const isIn = (routing: string, group: string) => group.startsWith(`${routing}/`);
  const takenRoutings = routings.filter((routing) => {
    const groups = OF_A_ROUTING.flatMap((root) => [...cells[root].keys()].map((group) => ({ root, group })));
    const inner = groups.filter(({ group }) => isIn(routing, group));
    return !stands('routings', routing) || !inner.every(({ root, group }) => stands(root, group));
  });
  const takenHoles = new Set(holes.filter((hole) => !stands('holes', hole)));
  return ({ root, group }) =>
    (root === 'holes' && takenHoles.has(group)) ||
    takenRoutings.some((routing) =>
      root === 'routings' ? group === routing : OF_A_ROUTING.includes(root) && isIn(routing, group),
    );
}

function nameOf({ root, group, part }: Omit<Write, 'value'>): string {
  return `${root} ${group} ${part}`;
}
