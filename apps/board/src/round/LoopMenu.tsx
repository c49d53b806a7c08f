import type { HoleId } from '@loopwright/model';
import { memo } from 'react';
import { Button, Menu, MenuItem, MenuTrigger, Popover, Separator, SubmenuTrigger } from 'react-aria-components';
import { saysTheSame } from '../reading/steady.ts';
import type { HoleChoice } from './bead-words.ts';

/** What was chosen in a loop's menu: something to do at once, or a question to be asked first. */
export type LoopChoice =
  | { readonly choose: 'reverse' | 'copy' | 'remove' | 'join' | 'change' | 'add' }
  | { readonly choose: 'split'; readonly after: HoleId };

export interface LoopMenuProps {
  readonly loop: string;
  readonly name: string;
  /** After which hole it can be split. */
  readonly splits: readonly HoleChoice[];
  /** The loop it can be joined with; empty for the last. */
  readonly next: string;
  readonly onChoose: (loop: string, choice: LoopChoice) => void;
}

/** What can be done with a whole loop. */
export const LoopMenu = memo(function LoopMenu({ loop, name, splits, next, onChoose }: LoopMenuProps) {
  const item = (words: string, choice: LoopChoice, disabled = false) => (
    <MenuItem className="menu__item" isDisabled={disabled} onAction={() => onChoose(loop, choice)}>
      {words}
    </MenuItem>
  );
  return (
    <MenuTrigger>
      <Button className="bead__more" aria-label={`What to do with the loop ${name}`}>
        ⋯
      </Button>
      <Popover className="popover">
        <Menu className="menu" aria-label={name}>
          {item('Name and base …', { choose: 'change' })}
          {item('Reverse: play it the other way round', { choose: 'reverse' }, splits.length === 0)}
          <SubmenuTrigger>
            <MenuItem className="menu__item" isDisabled={splits.length === 0}>
              Split in two …
            </MenuItem>
            <Popover className="popover">
              <Menu
                className="menu"
                aria-label="Split in two"
                items={splits.map((split) => ({ ...split, id: split.hole }))}
              >
                {({ hole, words }) => (
                  <MenuItem className="menu__item" onAction={() => onChoose(loop, { choose: 'split', after: hole })}>
                    {`after ${words.toLocaleLowerCase('en')}`}
                  </MenuItem>
                )}
              </Menu>
            </Popover>
          </SubmenuTrigger>
          {item(next ? `Join with ${next}` : 'Join with the next loop', { choose: 'join' }, next === '')}
          {item('Copy the loop with its holes', { choose: 'copy' })}
          {item('Remove the loop …', { choose: 'remove' })}
          <Separator className="menu__rule" />
          {item('Add a loop after it …', { choose: 'add' })}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}, saysTheSame);
