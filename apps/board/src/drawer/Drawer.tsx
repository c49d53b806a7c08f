import { memo, useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../board/parts.ts';
import { useSteady } from '../reading/use-steady.ts';
import { bringOut, chooseSheet, closeSecond, type DrawerTab, type OpenSheets, openSecond } from './drawer-tabs.ts';
import { Sheets } from './Sheets.tsx';
import { useDrawerOpen } from './use-drawer-open.ts';

/** Card, hole, site, findings, what changed, limits, points: one sheet, or two side by side on a wide screen. */
export function Drawer(board: DrawerProps) {
  const [open, setOpen] = useDrawerOpen();
  const [sheets, setSheets] = useState<OpenSheets>({ first: 'changed' });
  const bring = useSteady((tab: DrawerTab) => setSheets(bringOut(sheets, tab)));
  const { finding, thing } = board.selection;
  // A finding or a thing on the land that is picked out on the drawing is shown on its sheet.
  useEffect(() => {
    if (finding !== undefined) bring('findings');
  }, [finding, bring]);
  useEffect(() => {
    if (thing) bring('site');
  }, [thing, bring]);
  const { first, second } = sheets;
  const turnSecond = useSteady(() => setSheets(second ? closeSecond(sheets) : openSecond(sheets)));
  if (!open) return <ClosedDrawer onOpen={setOpen} />;
  return (
    <aside className={`drawer${second ? ' drawer--two' : ''}`} aria-label="Drawer">
      <Sheets
        name="Sheets"
        chosen={first}
        onChoose={(tab) => setSheets(chooseSheet(sheets, 'first', tab))}
        board={{ ...board, openSheet: bring }}
        beside={<DrawerButtons two={second !== undefined} onTwo={turnSecond} onOpen={setOpen} />}
      />
      {second && (
        <Sheets
          name="Second sheets"
          chosen={second}
          onChoose={(tab) => setSheets(chooseSheet(sheets, 'second', tab))}
          board={{ ...board, openSheet: bring }}
        />
      )}
    </aside>
  );
}

interface ClosedDrawerProps {
  readonly onOpen: (open: boolean) => void;
}

const ClosedDrawer = memo(function ClosedDrawer({ onOpen }: ClosedDrawerProps) {
  return (
    <aside className="drawer drawer--closed" aria-label="Drawer">
      <Button className="drawer__open" aria-label="Open the drawer, T" onPress={() => onOpen(true)}>
        <span aria-hidden="true">◂</span> Card, findings, what changed …
      </Button>
    </aside>
  );
});

interface DrawerButtonsProps extends ClosedDrawerProps {
  readonly two: boolean;
  readonly onTwo: () => void;
}

const DrawerButtons = memo(function DrawerButtons({ two, onTwo, onOpen }: DrawerButtonsProps) {
  return (
    <span className="drawer__buttons">
      <Button
        className="button button--small button--quiet drawer__two"
        aria-label={two ? 'One sheet alone' : 'Two sheets side by side'}
        onPress={onTwo}
      >
        {two ? '◧' : '◫'}
      </Button>
      <Button
        className="button button--small button--quiet"
        aria-label="Close the drawer, T"
        onPress={() => onOpen(false)}
      >
        ▸
      </Button>
    </span>
  );
});
