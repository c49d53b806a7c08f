import { makeId } from '@loopwright/model';
import { useMemo } from 'react';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../board/parts.ts';
import { toHoleMenu } from '../../hole-menu/hole-menu-view.ts';
import type { MenuEntry } from '../../hole-menu/menu-entry.ts';
import { chance } from '../../instruments/chance.ts';
import { namesOf } from '../../reading/names.ts';
import { chosenHoles } from '../../tools/chosen-holes.ts';
import { toSeveral } from './several-view.ts';

/** What several holes share, and what can be done with all of them, each as one step. */
export function SeveralHoles(props: DrawerProps) {
  const { plan, routing, analysis, reading, selection, edit, select } = props;
  const chosen = useMemo(() => chosenHoles(routing, selection), [routing, selection]);
  const several = toSeveral(props, reading, chosen);
  const menu = useMemo(() => {
    const names = namesOf(plan, routing, reading.units);
    const freshId = (letter: string) => makeId(letter, chance);
    return toHoleMenu({ plan, routing, analysis, names, freshId }, chosen);
  }, [plan, routing, analysis, reading.units, chosen]);
  const press = (entry: MenuEntry) => {
    if (!('act' in entry) || entry.act.do !== 'edit') return;
    edit(entry.act.edit);
    if (entry.act.select) select(entry.act.select);
  };
  return (
    <>
      <p>
        {several.together}; verdict: {several.verdicts}
        {several.pinned > 0 && `; ${several.pinned} with pins`}.
      </p>
      {menu?.parts.map((part) => (
        <section key={part.title} aria-label={part.title} className="hole-actions">
          <h3 className="field__label">{part.title}</h3>
          <div className="row">
            {part.entries.map((entry) => (
              <Button
                key={entry.title}
                className="button button--small"
                isDisabled={routing.locked || 'why' in entry}
                onPress={() => press(entry)}
              >
                {entry.title}
              </Button>
            ))}
          </div>
        </section>
      ))}
    </>
  );
}
