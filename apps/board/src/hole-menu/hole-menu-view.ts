import { type HoleId, holeOf } from '@loopwright/model';
import { holeWords } from '../reading/names.ts';
import { holesInOrder } from '../tools/chosen-holes.ts';
import type { MenuPart } from './menu-entry.ts';
import { type MenuSource, oneHoleMenu } from './one-hole-menu.ts';
import { severalHolesMenu } from './several-holes-menu.ts';

/** A menu with its name. */
export interface HoleMenuView {
  readonly title: string;
  readonly parts: readonly MenuPart[];
}

/** The menu for what is picked out; `undefined` when nothing on the plan is. */
export function toHoleMenu(source: MenuSource, chosen: readonly HoleId[]): HoleMenuView | undefined {
  const holes = chosen.flatMap((id) => holeOf(source.routing, id) ?? []);
  const [first] = holes;
  if (!first) return undefined;
  const title = holesWords(source, chosen);
  return { title, parts: holes.length === 1 ? oneHoleMenu(source, first) : severalHolesMenu(source, holes) };
}

/** 'hole 4', 'the spare hole Old mill', 'holes 3, 4 and 7'. */
export function holesWords(
  { routing, names }: Pick<MenuSource, 'routing' | 'names'>,
  chosen: readonly HoleId[],
): string {
  const [only] = chosen;
  if (only === undefined) return 'nothing';
  if (chosen.length === 1) return holeWords(routing, names, only);
  const numbers = holesInOrder(routing)
    .filter((hole) => chosen.includes(hole))
    .map(names.number);
  return `holes ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
}
