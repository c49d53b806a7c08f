import { lazy, memo, Suspense, useState } from 'react';
import { Button, Header, Menu, MenuItem, MenuSection, MenuTrigger, Popover, Separator } from 'react-aria-components';
import type { HeadProps } from '../../board/parts.ts';
import { routingTitle } from '../routing-title.ts';
import { LockedMark } from './LockedMark.tsx';
import type { RoutingQuestion } from './RoutingQuestions.tsx';
import { holesWords } from './routing-words.ts';

const Questions = lazy(() => import('./RoutingQuestions.tsx').then((asked) => ({ default: asked.RoutingQuestions })));

type RoutingMenuProps = Pick<HeadProps, 'routing' | 'routings' | 'edit' | 'onRouting' | 'onFlip'>;

/** The routing shown; its menu chooses another, and copies, renames, locks, starts and removes. */
export const RoutingMenu = memo(function RoutingMenu(props: RoutingMenuProps) {
  const [question, setQuestion] = useState<RoutingQuestion>();
  const { routing, routings, edit, onRouting, onFlip } = props;
  return (
    <div className="head__routing">
      <MenuTrigger>
        <Button className="button button--quiet head__routing-button" aria-label={`Routing: ${routingTitle(routing)}`}>
          <bdi className="head__routing-name">{routingTitle(routing)}</bdi>
          <span aria-hidden="true">▾</span>
        </Button>
        <Popover className="popover">
          <Menu className="menu routing-menu" aria-label="Routings">
            <MenuSection selectionMode="single" selectedKeys={[routing.id]} disallowEmptySelection>
              <Header className="menu__title">Show</Header>
              {routings.map((each) => (
                <RoutingItem key={each.id} routing={each} onRouting={onRouting} />
              ))}
            </MenuSection>
            <Separator className="menu__rule" />
            <Item onAction={onFlip} disabled={routings.length < 2}>
              Flip to the one before (V)
            </Item>
            <Item onAction={() => setQuestion('copy')}>Copy as …</Item>
            <Item onAction={() => setQuestion('rename')}>Rename …</Item>
            <Item
              onAction={() => edit({ edit: routing.locked ? 'unlock routing' : 'lock routing', routing: routing.id })}
            >
              {routing.locked ? 'Unlock: let it be changed' : 'Lock as the existing course'}
            </Item>
            <Item onAction={() => setQuestion('rounds')}>Rounds of loops …</Item>
            <Item onAction={() => setQuestion('remove')} disabled={routings.length < 2 || routing.locked}>
              Remove …
            </Item>
            <Separator className="menu__rule" />
            <Item onAction={() => setQuestion('new')}>New empty routing …</Item>
          </Menu>
        </Popover>
      </MenuTrigger>
      {routing.locked && <LockedMark />}
      {question && (
        <Suspense fallback={null}>
          <Questions {...{ question, routing, routings, edit, onRouting }} onClose={() => setQuestion(undefined)} />
        </Suspense>
      )}
    </div>
  );
});

function RoutingItem({
  routing,
  onRouting,
}: Pick<HeadProps, 'onRouting'> & { readonly routing: HeadProps['routing'] }) {
  const { id, name, locked } = routing;
  return (
    <MenuItem id={id} className="menu__item" textValue={name} onAction={() => onRouting(id)}>
      <span className="routing-menu__line">
        <bdi className="routing-menu__name">{routingTitle(routing)}</bdi>
        <span className="soft small">{locked ? `${holesWords(routing)}, locked` : holesWords(routing)}</span>
      </span>
    </MenuItem>
  );
}

interface ItemProps {
  readonly children: string;
  readonly onAction: () => void;
  readonly disabled?: boolean;
}

function Item({ children, onAction, disabled = false }: ItemProps) {
  return (
    <MenuItem className="menu__item" isDisabled={disabled} onAction={onAction}>
      {children}
    </MenuItem>
  );
}
