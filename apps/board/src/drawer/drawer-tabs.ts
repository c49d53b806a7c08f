/** The sheets of the drawer, in the order of its tabs; `said` where the tab is too narrow for all of its name. */
export const DRAWER_TABS = [
  { key: 'card', title: 'Card' },
  { key: 'hole', title: 'Hole' },
  { key: 'site', title: 'Site' },
  { key: 'findings', title: 'Findings' },
  { key: 'changed', title: 'What changed' },
  { key: 'limits', title: 'Limits' },
  { key: 'points', title: 'Points', said: 'Holes and points' },
] as const satisfies readonly { readonly key: string; readonly title: string; readonly said?: string }[];

export type DrawerTab = (typeof DRAWER_TABS)[number]['key'];

/** Which sheets lie open: one, or two side by side on a wide screen. */
export interface OpenSheets {
  readonly first: DrawerTab;
  readonly second?: DrawerTab;
}

/** Puts a second sheet beside the first: what changed, unless that is the first. */
export function openSecond({ first }: OpenSheets): OpenSheets {
  return { first, second: first === 'changed' ? 'card' : 'changed' };
}

/** One sheet alone again. */
export function closeSecond({ first }: OpenSheets): OpenSheets {
  return { first };
}

/** A sheet that is asked for: in the first place, unless it lies open already. */
export function bringOut(open: OpenSheets, tab: DrawerTab): OpenSheets {
  return open.first === tab || open.second === tab ? open : chooseSheet(open, 'first', tab);
}

/** Chooses what lies in one place; the two never show the same: the other gets what was here. */
export function chooseSheet(open: OpenSheets, place: 'first' | 'second', tab: DrawerTab): OpenSheets {
  const other = place === 'first' ? open.second : open.first;
  if (other === undefined) return { first: tab };
  const kept = other === tab ? open[place] : other;
  if (kept === undefined) return { first: tab };
  return place === 'first' ? { first: tab, second: kept } : { first: kept, second: tab };
}

/** The tab an arrow key, Home or End leads to; `undefined` for other keys. The ends meet. */
export function tabBeside(chosen: DrawerTab, key: string): DrawerTab | undefined {
  const place = DRAWER_TABS.findIndex((tab) => tab.key === chosen);
  const count = DRAWER_TABS.length;
  if (key === 'ArrowRight') return DRAWER_TABS[(place + 1) % count]?.key;
  if (key === 'ArrowLeft') return DRAWER_TABS[(place - 1 + count) % count]?.key;
  if (key === 'Home') return DRAWER_TABS[0].key;
  return key === 'End' ? DRAWER_TABS[count - 1]?.key : undefined;
}
