import type { HoleId, Verdict } from '@loopwright/model';
import { memo } from 'react';
import {
  Button,
  Header,
  Menu,
  MenuItem,
  MenuSection,
  MenuTrigger,
  Popover,
  SubmenuTrigger,
} from 'react-aria-components';
import { saysTheSame } from '../reading/steady.ts';
import type { HoleChoice } from './bead-words.ts';

export type BeadAction =
  | { readonly do: 'reverse' | 'take out' | 'bring back' | 'pick up' }
  | { readonly do: 'swap'; readonly with: HoleId }
  | { readonly do: 'judge'; readonly verdict: Verdict };

interface BeadMenuProps {
  readonly hole: HoleId;
  readonly number: string;
  readonly seat: 'loop' | 'tray';
  readonly swaps: readonly HoleChoice[];
  readonly onAction: (hole: HoleId, action: BeadAction) => void;
}

const VERDICTS: readonly Verdict[] = ['keeper', 'sound', 'weak', 'undecided'];

/** What can be done with one hole, without dragging. Costly to draw, so it is not while its hole is only dragged. */
export const BeadMenu = memo(function BeadMenu({ hole, number, seat, swaps, ...props }: BeadMenuProps) {
  const onAction = (action: BeadAction) => props.onAction(hole, action);
  return (
    <MenuTrigger>
      <Button className="bead__more" aria-label={`What to do with hole ${number}`}>
        ⋯
      </Button>
      <Popover className="popover">
        <Menu className="menu" aria-label={`Hole ${number}`}>
          {seat === 'loop' ? (
            <>
              <Item onAction={() => onAction({ do: 'pick up' })}>Move with the arrow keys</Item>
              <Item onAction={() => onAction({ do: 'reverse' })}>Reverse: play it the other way</Item>
              <Choices title="Swap with …" choices={swaps} onChoose={(hole) => onAction({ do: 'swap', with: hole })} />
              <Item onAction={() => onAction({ do: 'take out' })}>Take out to the spare tray</Item>
            </>
          ) : (
            <Item onAction={() => onAction({ do: 'bring back' })}>Bring back, last in the round</Item>
          )}
          <MenuSection>
            <Header className="menu__title">Verdict</Header>
            {VERDICTS.map((verdict) => (
              <Item key={verdict} onAction={() => onAction({ do: 'judge', verdict })}>
                {verdict}
              </Item>
            ))}
          </MenuSection>
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}, saysTheSame);

function Item({ children, onAction }: { readonly children: string; readonly onAction: () => void }) {
  return (
    <MenuItem className="menu__item" onAction={onAction}>
      {children}
    </MenuItem>
  );
}

interface ChoicesProps {
  readonly title: string;
  readonly choices: readonly HoleChoice[];
  readonly onChoose: (hole: HoleId) => void;
}

function Choices({ title, choices, onChoose }: ChoicesProps) {
  return (
    <SubmenuTrigger>
      <MenuItem className="menu__item">{title}</MenuItem>
      <Popover className="popover">
        <Menu className="menu" aria-label={title} items={choices.map((choice) => ({ ...choice, id: choice.hole }))}>
          {(choice) => (
            <MenuItem className="menu__item" onAction={() => onChoose(choice.hole)}>
              {choice.words}
            </MenuItem>
          )}
        </Menu>
      </Popover>
    </SubmenuTrigger>
  );
}
