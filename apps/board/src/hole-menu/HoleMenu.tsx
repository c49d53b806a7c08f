import { makeId } from '@loopwright/model';
import { useMemo, useRef } from 'react';
import { Popover } from 'react-aria-components';
import type { Consequences, Reading, Selection } from '../board/parts.ts';
import { chance } from '../instruments/chance.ts';
import { namesOf } from '../reading/names.ts';
import { chosenHoles } from '../tools/chosen-holes.ts';
import { HoleMenuItems } from './HoleMenuItems.tsx';
import type { HoleHands, OpenMenu } from './hole-hands.ts';
import { toHoleMenu } from './hole-menu-view.ts';

interface HoleMenuProps extends Consequences {
  readonly reading: Reading;
  readonly selection: Selection;
  readonly hands: HoleHands;
  readonly open: OpenMenu;
}

/** The menu at the pointer, for what is picked out. */
export function HoleMenu(props: HoleMenuProps) {
  const anchor = useRef<HTMLSpanElement>(null);
  const { hands, open } = props;
  const menu = useHoleMenu(props, open.part);
  if (!menu) return null;
  return (
    <>
      <span ref={anchor} className="hole-menu__anchor" style={{ left: open.at.x, top: open.at.y }} />
      <Popover
        className="popover hole-menu"
        triggerRef={anchor}
        isOpen
        placement="bottom start"
        offset={2}
        onOpenChange={() => hands.menu.set(undefined)}
      >
        <p className="hole-menu__title" aria-hidden="true">
          {menu.title}
        </p>
        <HoleMenuItems menu={menu} onAct={hands.act} />
      </Popover>
    </>
  );
}

/** The menu as it was when it was opened: its ids are made once, and it does not change under the hand. */
export function useHoleMenu(
  props: Consequences & Pick<HoleMenuProps, 'reading' | 'selection'>,
  part: OpenMenu['part'],
) {
  const { plan, routing, analysis, reading, selection } = props;
  return useMemo(() => {
    const names = namesOf(plan, routing, reading.units);
    const freshId = (letter: string) => makeId(letter, chance);
    const source = { plan, routing, analysis, names, freshId, ...(part === undefined ? {} : { part }) };
    return toHoleMenu(source, chosenHoles(routing, selection));
  }, [plan, routing, analysis, reading.units, selection, part]);
}
