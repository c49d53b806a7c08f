import { type ComponentType, lazy } from 'react';
import type { DrawerProps } from '../board/parts.ts';

type Panel = ComponentType<DrawerProps>;

/** A sheet that is fetched when it is first opened; what could not be fetched says so, and the board goes on. */
function fetched(fetchSheet: () => Promise<Panel>): Panel {
  return lazy(() =>
    fetchSheet().then(
      (sheet) => ({ default: sheet }),
      () => ({ default: NotFetched }),
    ),
  );
}

function NotFetched() {
  return (
    <p className="empty" role="alert">
      <strong>This sheet could not be fetched.</strong> Nothing was lost. Reload the page once the server can be
      reached.
    </p>
  );
}

export const LazyCard = fetched(() => import('./card/CardPanel.tsx').then(({ CardPanel }) => CardPanel));
export const LazyHole = fetched(() => import('./hole/HolePanel.tsx').then(({ HolePanel }) => HolePanel));
export const LazySite = fetched(() => import('./site/SitePanel.tsx').then(({ SitePanel }) => SitePanel));
export const LazyFindings = fetched(() =>
  import('./findings/FindingsPanel.tsx').then(({ FindingsPanel }) => FindingsPanel),
);
export const LazyLimits = fetched(() => import('./limits/LimitsPanel.tsx').then(({ LimitsPanel }) => LimitsPanel));
export const LazyPoints = fetched(() => import('./points/PointsPanel.tsx').then(({ PointsPanel }) => PointsPanel));
