import { ToggleButton } from 'react-aria-components';
import type { HeadProps } from '../board/parts.ts';
import { Choices } from '../style/Choices.tsx';
import { HeadMenu } from './HeadMenu.tsx';
import { Invite } from './Invite.tsx';
import { PeopleHere } from './PeopleHere.tsx';
import { routingTitle } from './routing-title.ts';
import { Saved } from './Saved.tsx';
import { SiteNote } from './SiteNote.tsx';
import { Steps } from './Steps.tsx';
import { stepTitle } from './step-title.ts';
import { TeesInUse } from './TeesInUse.tsx';

const UNITS = [
  { key: 'yards', words: 'yards' },
  { key: 'metres', words: 'metres' },
] as const;

/** Board, routing, tees and units; who is here; whether everything is saved. */
export function Head(props: HeadProps) {
  const { siteName, siteNote, routing, reading, onReading, findingsShown, onFindingsShown } = props;
  const undo = stepTitle(props.undoStep, routing, props.teeSets);
  const redo = stepTitle(props.redoStep, routing, props.teeSets);
  return (
    <header className="head">
      <h1 className="head__site" title={siteName}>
        {siteName}
      </h1>
      {siteNote && <SiteNote note={siteNote} />}
      <p className="head__routing">
        {routingTitle(routing)}
        {routing.locked && <span className="soft"> · locked</span>}
      </p>
      <TeesInUse teeSets={props.teeSets} reading={reading} onReading={onReading} />
      <Choices
        label="Units"
        choices={UNITS}
        chosen={reading.units}
        onChoose={(units) => onReading({ ...reading, units })}
      />
      <Steps undo={undo} redo={redo} onUndo={props.onUndo} onRedo={props.onRedo} />
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
      <HeadMenu
        routing={routing}
        routings={props.routings}
        onRouting={props.onRouting}
        onSaveFile={props.onSaveFile}
        onKeys={props.onKeys}
        goTo={props.goTo}
      />
    </header>
  );
}
