import type { Box } from '@loopwright/geometry';
import { type FeatureGeometry, type HoleId, type Settings, type SitePoint, settingsOf } from '@loopwright/model';
import type { Consequences } from '../../board/parts.ts';
import type { Names } from '../../reading/names.ts';
import type { SnapWishes } from '../instrument.ts';
import { type Guide, ringGuide } from './guide.ts';
import { legGuides } from './leg-guides.ts';
import { boundaryGuides, featureGuides } from './outline-guides.ts';
import { markGuides, partGuides } from './place-guides.ts';

export interface SnapGround extends Consequences {
  /** The holes that pull: not one that is only being drawn. */
  readonly holes: ReadonlySet<HoleId>;
  readonly names: Names;
  readonly at: SitePoint;
  /** Metres on the ground. */
  readonly reach: number;
  readonly boxOf: (geometry: FeatureGeometry) => Box;
}

/**
 * Everything that may pull at a point of such a use.
 *
 * Cost: a few operations for each hole and mark; for each point of the outlines whose box is near.
 */
export function guidesFor(ground: SnapGround, wishes: SnapWishes): readonly Guide[] {
  const { plan, routing, analysis, holes, names } = ground;
  const settings = settingsOf(plan.settings);
  const standing = routing.holes.filter(({ id, seat }) => holes.has(id) && seat.in !== 'removed');
  const lines = standing.map(({ id }) => ({ hole: id, points: analysis.holes.get(id)?.centreline ?? [] }));
  const leg = { drive: settings['turn-at-drive'], lines, at: ground.at, words: names };
  const outlines = { ...ground, length: names.length, nameOf: names.feature };
  const inset = insetFor(wishes, settings, plan.site.boundary?.tolerance ?? 0);
  return [
    ...markGuides(plan.site.marks, wishes),
    ...partGuides(standing, wishes, names.number),
    ...(wishes.rings ?? []).map((ring) =>
      ringGuide(ring.centre, ring.radius, { because: ring.because, strength: 58, reach: 1 }),
    ),
    ...legGuides(wishes, leg),
    ...featureGuides(plan.site.features, wishes, outlines),
    ...boundaryGuides(plan.site.boundary, wishes, inset, outlines),
  ];
}

/** How far inside the drawn boundary such a point lies when the board's limits notice nothing, in metres. */
function insetFor(wishes: SnapWishes, settings: Settings, tolerance: number): number {
  switch (wishes.for) {
    case 'tee':
    case 'turn or tee':
      return settings['edge-tee-mention'] + tolerance;
    case 'green':
    case 'turn or green':
      return settings['edge-green-mention'] + tolerance;
    case 'turn':
      return settings['edge-landing-mention'] + tolerance;
    default:
      return 0;
  }
}
