import { type HoleId, holeOf } from '@loopwright/model';
import { holesWords } from '../reading/holes-words.ts';
import type { MenuPart } from './menu-entry.ts';
import type { MenuSource } from './menu-source.ts';
import { oneHoleMenu } from './one-hole-menu.ts';
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
