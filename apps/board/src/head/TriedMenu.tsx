import type { DoneStep } from '@loopwright/document';
import { memo } from 'react';
import { Button, Header, Menu, MenuItem, MenuSection, MenuTrigger, Popover } from 'react-aria-components';

interface TriedMenuProps {
  /** Mine that still stand, oldest first. */
  readonly done: readonly DoneStep[];
  readonly title: (step: DoneStep) => string;
  readonly onPutBack: (from: number) => void;
}

/** So many steps are listed; older ones are reached by putting these back first. */
const MOST_LISTED = 60;

/** My steps by name, newest first: choosing one puts back that one and all of mine since. */
export const TriedMenu = memo(function TriedMenu({ done, title, onPutBack }: TriedMenuProps) {
  const listed = done.slice(-MOST_LISTED).reverse();
  return (
    <MenuTrigger>
      <Button
        className="button button--quiet steps__step steps__tried"
        aria-label="Put back what was tried"
        isDisabled={done.length === 0}
      >
        <span aria-hidden="true">▾</span>
      </Button>
      <Popover className="popover">
        <Menu className="menu" aria-label="Put back what was tried">
          <MenuSection>
            <Header className="menu__title">Put back what was tried, from this step of mine on</Header>
            {listed.map((step, after) => (
              <MenuItem
                key={step.number}
                id={step.number}
                className="menu__item"
                textValue={title(step)}
                onAction={() => onPutBack(step.number)}
              >
                <span className="tried__line">
                  <span>{title(step)}</span>
                  <span className="soft small">{after === 0 ? 'the last' : `and ${after} since`}</span>
                </span>
              </MenuItem>
            ))}
          </MenuSection>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
});
