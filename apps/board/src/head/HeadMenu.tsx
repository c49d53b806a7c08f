import { Button, Header, Menu, MenuItem, MenuSection, MenuTrigger, Popover } from 'react-aria-components';
import type { HeadProps } from '../board/parts.ts';

type HeadMenuProps = Pick<HeadProps, 'routing' | 'routings' | 'onRouting' | 'onSaveFile' | 'onKeys' | 'goTo'>;

/** What is needed now and then: routings, the board file, a new board, printing, keys. */
export function HeadMenu({ routing, routings, onRouting, onSaveFile, onKeys, goTo }: HeadMenuProps) {
  return (
    <MenuTrigger>
      <Button className="button button--quiet" aria-label="Menu">
        ☰
      </Button>
      <Popover className="popover">
        <Menu className="menu" aria-label="Board">
          {routings.length > 1 && (
            <MenuSection selectionMode="single" selectedKeys={[routing.id]} disallowEmptySelection>
              <Header className="menu__title">Routings</Header>
              {routings.map(({ id, name, locked }) => (
                <MenuItem key={id} id={id} className="menu__item" textValue={name} onAction={() => onRouting(id)}>
                  {locked ? `${name}, locked` : name}
                </MenuItem>
              ))}
            </MenuSection>
          )}
          <MenuItem className="menu__item" onAction={() => goTo({ kind: 'all' })}>
            Show the whole site
          </MenuItem>
          <MenuItem className="menu__item" onAction={onSaveFile}>
            Save the board as a file
          </MenuItem>
          <MenuItem className="menu__item" href="/" target="_blank">
            New board from a file …
          </MenuItem>
          <MenuItem className="menu__item" onAction={() => window.print()}>
            Print
          </MenuItem>
          <MenuItem className="menu__item" onAction={onKeys}>
            Keys
          </MenuItem>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
