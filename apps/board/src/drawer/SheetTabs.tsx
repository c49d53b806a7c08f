import { type KeyboardEvent, memo } from 'react';
import { DRAWER_TABS, type DrawerTab, tabBeside } from './drawer-tabs.ts';

interface SheetTabsProps {
  readonly name: string;
  /** Begins the ids that tie each tab to its sheet. */
  readonly id: string;
  readonly chosen: DrawerTab;
  readonly onChoose: (tab: DrawerTab) => void;
}

/**
 * The tabs above a sheet, by the ARIA pattern for tabs: arrows choose, the chosen one alone is in the tab order.
 *
 * Our own, since the library's panel searches the whole sheet for fields after every change of it: 3 ms of each frame
 * of a drag.
 */
export const SheetTabs = memo(function SheetTabs({ name, id, chosen, onChoose }: SheetTabsProps) {
  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const tab = tabBeside(chosen, event.key);
    if (!tab) return;
    event.preventDefault();
    onChoose(tab);
    document.getElementById(`${id}-tab-${tab}`)?.focus();
  };
  return (
    <div role="tablist" aria-label={name} className="tabs__list" onKeyDown={onKeyDown}>
      {DRAWER_TABS.map(({ key, title, ...tab }) => {
        const selected = key === chosen;
        const said = 'said' in tab ? tab.said : undefined;
        return (
          <button
            key={key}
            type="button"
            role="tab"
            id={`${id}-tab-${key}`}
            className="tabs__tab"
            aria-label={said}
            title={said}
            data-title={title}
            aria-selected={selected}
            aria-controls={selected ? `${id}-sheet` : undefined}
            tabIndex={selected ? 0 : -1}
            onClick={() => onChoose(key)}
          >
            {title}
          </button>
        );
      })}
    </div>
  );
});
