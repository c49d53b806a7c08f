import { memo, useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../board/parts.ts';
import { useSteady } from '../reading/use-steady.ts';
import { chooseSheet, closeSecond, type OpenSheets, openSecond } from './drawer-tabs.ts';
import { Sheets } from './Sheets.tsx';

/** Card, findings, what changed, limits, holes and points: one sheet, or two side by side on a wide screen. */
export function Drawer(props: DrawerProps) {
  const [open, setOpen] = useState<OpenSheets>({ first: 'changed' });
  const { finding } = props.selection;
  const showFindings = useSteady(() => {
    if (open.first !== 'findings' && open.second !== 'findings') setOpen(chooseSheet(open, 'first', 'findings'));
  });
  // A finding picked out on the drawing is shown in the list.
  useEffect(() => {
    if (finding !== undefined) showFindings();
  }, [finding, showFindings]);
  const { first, second } = open;
  const turnSecond = useSteady(() => setOpen(second ? closeSecond(open) : openSecond(open)));
  return (
    <aside className={`drawer${second ? ' drawer--two' : ''}`} aria-label="Card, findings and what changed">
      <Sheets
        name="Sheets"
        chosen={first}
        onChoose={(tab) => setOpen(chooseSheet(open, 'first', tab))}
        board={props}
        beside={<SecondSheet shown={second !== undefined} onPress={turnSecond} />}
      />
      {second && (
        <Sheets
          name="Second sheets"
          chosen={second}
          onChoose={(tab) => setOpen(chooseSheet(open, 'second', tab))}
          board={props}
        />
      )}
    </aside>
  );
}

interface SecondSheetProps {
  readonly shown: boolean;
  readonly onPress: () => void;
}

const SecondSheet = memo(function SecondSheet({ shown, onPress }: SecondSheetProps) {
  return (
    <Button
      className="button button--small button--quiet drawer__two"
      aria-label={shown ? 'One sheet alone' : 'Two sheets side by side'}
      onPress={onPress}
    >
      {shown ? '◧' : '◫'}
    </Button>
  );
});
