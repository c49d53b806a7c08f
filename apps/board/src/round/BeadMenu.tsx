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
  | { readonly do: 'reverse' | 'take out' | 'bring back' | 'pick up' | 'split' }
  | { readonly do: 'draw'; readonly before: HoleId }
  | { readonly do: 'insert'; readonly spare: HoleId }
  | { readonly do: 'swap'; readonly with: HoleId }
  | { readonly do: 'judge'; readonly verdict: Verdict };

interface BeadMenuProps {
  readonly hole: HoleId;
  readonly number: string;
  /** How many holes are picked out with it, itself counted. */
  readonly among: number;
  readonly seat: 'loop' | 'tray';
  readonly swaps: readonly HoleChoice[];
  /** The hole that follows it on its loop: another can be drawn between them. */
  readonly next?: HoleId;
  /** Spare holes that can be inserted after it. */
  readonly spares: readonly HoleChoice[];
  readonly onAction: (hole: HoleId, action: BeadAction) => void;
}

const VERDICTS: readonly Verdict[] = ['keeper', 'sound', 'weak', 'undecided'];

/** What can be done with one hole, without dragging. Costly to draw, so it is not while its hole is only dragged. */
export const BeadMenu = memo(function BeadMenu({
  hole,
  number,
  among,
  seat,
  swaps,
  spares,
  next,
  ...props
}: BeadMenuProps) {
  const onAction = (action: BeadAction) => props.onAction(hole, action);
  return (
    <MenuTrigger>
      <Button className="bead__more" aria-label={`What to do with hole ${number}`}>
        ⋯
      </Button>
      <Popover className="popover">
        <Menu className="menu" aria-label={`Hole ${number}`}>
          {among > 1 ? (
            <>
              <Item onAction={() => onAction({ do: 'pick up' })}>{`Move ${among} holes with the arrow keys`}</Item>
              <Item onAction={() => onAction({ do: 'take out' })}>{`Take ${among} holes out to the spare tray`}</Item>
            </>
          ) : seat === 'loop' ? (
            <>
              <Item onAction={() => onAction({ do: 'pick up' })}>Move with the arrow keys</Item>
              <Item onAction={() => onAction({ do: 'reverse' })}>Reverse: play it the other way</Item>
              <Choices title="Swap with …" choices={swaps} onChoose={(hole) => onAction({ do: 'swap', with: hole })} />
              <Choices
                title="Insert after it …"
                choices={spares}
                onChoose={(spare) => onAction({ do: 'insert', spare })}
              />
              {next !== undefined && (
                <Item onAction={() => onAction({ do: 'draw', before: next })}>Draw a new hole after it</Item>
              )}
              <Item onAction={() => onAction({ do: 'take out' })}>Take out to the spare tray</Item>
              <Item onAction={() => onAction({ do: 'split' })}>Split the loop after it</Item>
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
      <MenuItem className="menu__item" isDisabled={choices.length === 0}>
        {title}
      </MenuItem>
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
