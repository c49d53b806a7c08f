import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import type { HeadProps } from '../board/parts.ts';

type HeadMenuProps = Pick<HeadProps, 'onSaveFile' | 'onKeys' | 'goTo'>;

/** What is needed now and then: the board file, a new board, printing, keys. */
export function HeadMenu({ onSaveFile, onKeys, goTo }: HeadMenuProps) {
  return (
    <MenuTrigger>
      <Button className="button button--quiet" aria-label="Menu">
        ☰
      </Button>
      <Popover className="popover">
        <Menu className="menu" aria-label="Board">
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
