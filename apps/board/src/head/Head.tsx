import type { DoneStep } from '@loopwright/document';
import { ToggleButton } from 'react-aria-components';
import type { HeadProps } from '../board/parts.ts';
import { useSteady } from '../reading/use-steady.ts';
import { Choices } from '../style/Choices.tsx';
import { HeadMenu } from './HeadMenu.tsx';
import { Invite } from './Invite.tsx';
import { PeopleHere } from './PeopleHere.tsx';
import { RoutingMenu } from './routings/RoutingMenu.tsx';
import { Saved } from './Saved.tsx';
import { SiteNote } from './SiteNote.tsx';
import { Steps } from './Steps.tsx';
import { SiteName } from './site/SiteName.tsx';
import { stepTitle } from './step-title.ts';
import { TeesInUse } from './TeesInUse.tsx';
import { TriedMenu } from './TriedMenu.tsx';

const UNITS = [
  { key: 'yards', words: 'yards' },
  { key: 'metres', words: 'metres' },
] as const;

/** Board, routing, tees and units; who is here; whether everything is saved. */
export function Head(props: HeadProps) {
  const { siteNote, routing, reading, onReading, findingsShown, onFindingsShown } = props;
  const undo = stepTitle(props.undoStep, routing, props.teeSets);
  const redo = stepTitle(props.redoStep, routing, props.teeSets);
  const title = useSteady(({ edit }: DoneStep) => stepTitle(edit, routing, props.teeSets));
  return (
    <header className="head">
      <SiteName {...pick(props)} />
      {siteNote && <SiteNote note={siteNote} />}
      <RoutingMenu
        routing={routing}
        routings={props.routings}
        edit={props.edit}
        onRouting={props.onRouting}
        onFlip={props.onFlip}
      />
      <TeesInUse teeSets={props.teeSets} reading={reading} onReading={onReading} />
      <Choices
        label="Units"
        choices={UNITS}
        chosen={reading.units}
        onChoose={(units) => onReading({ ...reading, units })}
      />
      <Steps undo={undo} redo={redo} onUndo={props.onUndo} onRedo={props.onRedo}>
        <TriedMenu done={props.done} title={title} onPutBack={props.onPutBack} />
      </Steps>
      <span className="head__space" />
      <Saved saved={props.saved} />
      <PeopleHere me={props.me} people={props.people} />
      <ToggleButton
        className="button head__findings"
        isSelected={!findingsShown}
        onChange={(hide) => onFindingsShown(!hide)}
      >
        Hide findings
      </ToggleButton>
      <Invite link={props.inviteLink} />
      <HeadMenu onSaveFile={props.onSaveFile} onKeys={props.onKeys} goTo={props.goTo} />
    </header>
  );
}

const pick = ({ siteName, siteNote, siteUnits, edit }: HeadProps) => ({
  siteName,
  edit,
  ...(siteNote === undefined ? {} : { siteNote }),
  ...(siteUnits === undefined ? {} : { siteUnits }),
});
