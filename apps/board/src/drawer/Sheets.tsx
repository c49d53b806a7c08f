import { type ReactNode, Suspense, useId } from 'react';
import type { DrawerProps } from '../board/parts.ts';
import { useSteady } from '../reading/use-steady.ts';
import { WhatChanged } from './changed/WhatChanged.tsx';
import type { DrawerTab } from './drawer-tabs.ts';
import { LazyCard, LazyFindings, LazyHole, LazyLimits, LazyPoints, LazySite } from './lazy-sheets.tsx';
import { SheetTabs } from './SheetTabs.tsx';

const PANELS = {
  card: LazyCard,
  hole: LazyHole,
  site: LazySite,
  findings: LazyFindings,
  changed: WhatChanged,
  limits: LazyLimits,
  points: LazyPoints,
} as const;

interface SheetsProps {
  readonly name: string;
  readonly chosen: DrawerTab;
  readonly onChoose: (tab: DrawerTab) => void;
  readonly board: DrawerProps;
  readonly beside?: ReactNode;
}

/** One set of tabs with the chosen sheet under it. Only that sheet is drawn. */
export function Sheets({ name, chosen, onChoose, board, beside }: SheetsProps) {
  const Panel = PANELS[chosen];
  const id = useId();
  return (
    <div className="tabs">
      <div className="tabs__head">
        <SheetTabs name={name} id={id} chosen={chosen} onChoose={useSteady(onChoose)} />
        {beside}
      </div>
      <div
        role="tabpanel"
        id={`${id}-sheet`}
        aria-labelledby={`${id}-tab-${chosen}`}
        className="drawer__panel"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a sheet that scrolls must be reached by the keyboard
        tabIndex={0}
      >
        <Suspense fallback={<p className="drawer__wait soft small">Fetching the sheet …</p>}>
          <Panel {...board} />
        </Suspense>
      </div>
    </div>
  );
}
