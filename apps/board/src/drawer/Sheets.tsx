import type { ReactNode } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import type { DrawerProps } from '../board/parts.ts';
import { CardPanel } from './card/CardPanel.tsx';
import { WhatChanged } from './changed/WhatChanged.tsx';
import { DRAWER_TABS, type DrawerTab } from './drawer-tabs.ts';
import { FindingsPanel } from './findings/FindingsPanel.tsx';
import { LimitsPanel } from './limits/LimitsPanel.tsx';
import { PointsPanel } from './points/PointsPanel.tsx';

const PANELS = {
  card: CardPanel,
  findings: FindingsPanel,
  changed: WhatChanged,
  limits: LimitsPanel,
  points: PointsPanel,
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
  return (
    <Tabs
      className="tabs"
      selectedKey={chosen}
      onSelectionChange={(key) => {
        const tab = DRAWER_TABS.find((each) => each.key === key);
        if (tab) onChoose(tab.key);
      }}
    >
      <div className="tabs__head">
        <TabList className="tabs__list" aria-label={name}>
          {DRAWER_TABS.map(({ key, title }) => (
            <Tab key={key} id={key} className="tabs__tab">
              {title}
            </Tab>
          ))}
        </TabList>
        {beside}
      </div>
      {DRAWER_TABS.map(({ key }) => (
        <TabPanel key={key} id={key} className="drawer__panel">
          <Panel {...board} />
        </TabPanel>
      ))}
    </Tabs>
  );
}
