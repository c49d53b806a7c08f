import { Header, Menu, MenuItem, MenuSection, Popover, SubmenuTrigger } from 'react-aria-components';
import type { HoleMenuView } from './hole-menu-view.ts';
import type { HoleAct, MenuEntry } from './menu-entry.ts';

interface HoleMenuItemsProps {
  readonly menu: HoleMenuView;
  readonly onAct: (act: HoleAct) => void;
}

/** The menu of a hole, or of several: what cannot be done now says why. */
export function HoleMenuItems({ menu, onAct }: HoleMenuItemsProps) {
  return (
    <Menu className="menu" aria-label={`What to do with ${menu.title}`} autoFocus="first">
      {menu.parts
        .filter(({ entries }) => entries.length > 0)
        .map(({ title, entries }) => (
          <MenuSection key={title}>
            <Header className="menu__title">{title}</Header>
            {entries.map((entry) => (
              <Entry key={entry.title} entry={entry} onAct={onAct} />
            ))}
          </MenuSection>
        ))}
    </Menu>
  );
}

function Entry({ entry, onAct }: { readonly entry: MenuEntry; readonly onAct: (act: HoleAct) => void }) {
  if ('inside' in entry) return <Inside entry={entry} onAct={onAct} />;
  if ('why' in entry) {
    return (
      <MenuItem className="menu__item" textValue={entry.title} isDisabled>
        {entry.title}
        {entry.why && <span className="menu__why">{entry.why}</span>}
      </MenuItem>
    );
  }
  return (
    <MenuItem className="menu__item" onAction={() => onAct(entry.act)}>
      {entry.title}
    </MenuItem>
  );
}

interface InsideProps {
  readonly entry: Extract<MenuEntry, { readonly inside: unknown }>;
  readonly onAct: (act: HoleAct) => void;
}

function Inside({ entry, onAct }: InsideProps) {
  return (
    <SubmenuTrigger>
      <MenuItem className="menu__item menu__item--inside" textValue={entry.title}>
        {entry.title}
      </MenuItem>
      <Popover className="popover">
        <Menu className="menu" aria-label={entry.title}>
          {entry.inside.map((inner) => (
            <Entry key={inner.title} entry={inner} onAct={onAct} />
          ))}
        </Menu>
      </Popover>
    </SubmenuTrigger>
  );
}
