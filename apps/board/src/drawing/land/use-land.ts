import type { NamedEdit } from '@loopwright/document';
import type { Base, Boundary, Plan, SiteMark } from '@loopwright/model';
import { useMemo } from 'react';
import type { Change, SiteThing } from '../../board/parts.ts';
import type { CentreOf } from '../../tools/hit-sketch.ts';
import { openLandTargets } from '../../tools/land/hit-site.ts';
import { landGrips } from '../../tools/land/land-grips.ts';
import { type FeatureView, openFeatureViews } from '../feature-view.ts';
import { openSteadyList } from '../steady-list.ts';
import { type ThingKey, thingsInHand } from './things-in-hand.ts';

/** What stands on the land, as far as it is at rest or in somebody's hands. */
export interface LandShown {
  readonly features: readonly FeatureView[];
  readonly boundary: Boundary | undefined;
  readonly marks: readonly SiteMark[];
  readonly bases: readonly Base[];
}

interface LandParts {
  readonly site: Plan['site'];
  readonly drags: readonly NamedEdit[];
  readonly change: Change | undefined;
  readonly chosen: SiteThing | undefined;
  /** Pixels per metre. */
  readonly scale: number;
  /** Where a clearance ring has its middle. */
  readonly centreOf: CentreOf;
}

const NONE: readonly never[] = [];

/** The land of the drawing: what is still, what moves, what it was before, and what can be taken hold of. */
export function useLand({ site, drags, change, chosen, scale, centreOf }: LandParts) {
  const makers = useMemo(
    () => ({
      views: openFeatureViews(),
      before: openFeatureViews(),
      targets: openLandTargets(),
      features: openSteadyList<FeatureView>(),
      marks: openSteadyList<SiteMark>(),
      bases: openSteadyList<Base>(),
    }),
    [],
  );
  const views = useMemo(() => makers.views(site.features), [makers, site.features]);
  const inHand = useMemo(() => thingsInHand(drags), [drags]);
  const still = <Thing extends { readonly id: string }>(kind: 'feature' | 'mark' | 'base', things: readonly Thing[]) =>
    inHand.size === 0 ? things : things.filter(({ id }) => !inHand.has(`${kind} ${id}`));
  const features = makers.features(still('feature', views));
  const marks = makers.marks(still('mark', site.marks));
  const bases = makers.bases(still('base', site.bases));
  const boundary = inHand.has('boundary') ? undefined : site.boundary;
  const land = useMemo<LandShown>(() => ({ features, marks, bases, boundary }), [features, marks, bases, boundary]);
  const moving = inHand.size === 0 ? undefined : movingOf(site, views, inHand);
  const before = change?.state === 'in progress' && inHand.size > 0 ? change.beforePlan.site.features : undefined;
  const ghosts = useMemo(
    () => (before ? makers.before(before.filter(({ id }) => inHand.has(`feature ${id}`))) : NONE),
    [before, inHand, makers],
  );
  const grips = useMemo(() => landGrips(site, chosen, scale), [site, chosen, scale]);
  return { still: land, moving, ghosts, grips, targets: makers.targets({ site, grips, chosen, centreOf }) };
}

function movingOf(site: Plan['site'], views: readonly FeatureView[], inHand: ReadonlySet<ThingKey>): LandShown {
  return {
    features: views.filter(({ id }) => inHand.has(`feature ${id}`)),
    marks: site.marks.filter(({ id }) => inHand.has(`mark ${id}`)),
    bases: site.bases.filter(({ id }) => inHand.has(`base ${id}`)),
    boundary: inHand.has('boundary') ? site.boundary : undefined,
  };
}
