// What pulls at a point on a busy board, 18 holes and 200 features of 60 corners: ours, which goes through the outlines
// whose box is near, beside the same guides from all outlines.
import { openAnalysis } from '@loopwright/analysis';
import { demoPlan } from '@loopwright/demo';
import { type Box, boundsOf } from '@loopwright/geometry';
import { type Feature, type FeatureGeometry, type Plan, presetOf, seededRandom } from '@loopwright/model';
import { bench, describe } from 'vitest';
import { outerPoints } from '../../drawing/outer-points.ts';
import { namesOf } from '../../reading/names.ts';
import { guidesFor } from './guides-for.ts';

const [FEATURES, CORNERS] = [200, 60];
const random = seededRandom(8);

function pond(index: number): Feature {
  const middle = { x: 1500 * random(), y: 1200 * random() };
  const ring = Array.from({ length: CORNERS }, (_, corner) => {
    const [angle, radius] = [(2 * Math.PI * corner) / CORNERS, 10 + 20 * random()];
    return { x: middle.x + radius * Math.cos(angle), y: middle.y + radius * Math.sin(angle) };
  });
  return { id: `pond-${index}`, kind: 'water', geometry: { type: 'area', rings: [ring] }, ...presetOf('water') };
}

const demo = demoPlan();
const features = [...demo.site.features, ...Array.from({ length: FEATURES }, (_, index) => pond(index))];
const PLAN: Plan = { ...demo, site: { ...demo.site, features } };
const ROUTING = PLAN.routings[0];
if (!ROUTING) throw new Error('the demo has a routing');
const GROUND = {
  plan: PLAN,
  routing: ROUTING,
  analysis: openAnalysis().analyse(PLAN, ROUTING.id),
  holes: new Set(ROUTING.holes.map(({ id }) => id)),
  names: namesOf(PLAN, ROUTING, 'metres'),
  at: { x: 700, y: 500 },
  reach: 12,
};

const boxes = new Map<FeatureGeometry, Box>(
  features.map(({ geometry }) => [geometry, boundsOf(outerPoints(geometry))]),
);
const EVERYWHERE = boundsOf([
  { x: -1e6, y: -1e6 },
  { x: 1e6, y: 1e6 },
]);

describe(`guides on a board of ${FEATURES} features`, () => {
  bench('ours', () => {
    const guides = guidesFor(
      { ...GROUND, boxOf: (geometry) => boxes.get(geometry) ?? EVERYWHERE },
      { for: 'anything' },
    );
    if (guides.length === 0) throw new Error('nothing pulls');
  });
  bench('from all outlines', () => {
    const guides = guidesFor({ ...GROUND, boxOf: () => EVERYWHERE }, { for: 'anything' });
    if (guides.length === 0) throw new Error('nothing pulls');
  });
});
