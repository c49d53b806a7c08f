import type { Feature, FeatureGeometry, Plan, SitePoint } from '@loopwright/model';
import { pointToMillimetre } from '@loopwright/model';
import { pick, type Random, shift } from './random-pick.ts';

function withFeature(plan: Plan, random: Random, change: (feature: Feature) => Feature): Plan {
  const chosen = pick(plan.site.features, random);
  const features = plan.site.features.map((feature) => (feature === chosen ? change(feature) : feature));
  return { ...plan, site: { ...plan.site, features } };
}

/** One corner of a consultant's line moved, added or taken out. */
function moveCorner(plan: Plan, random: Random): Plan {
  return withFeature(plan, random, (feature) => ({ ...feature, geometry: reshaped(feature.geometry, random) }));
}

function reshaped(geometry: FeatureGeometry, random: Random): FeatureGeometry {
  if (geometry.type === 'point') return { type: 'point', at: shift(geometry.at, random) };
  if (geometry.type === 'line') return { type: 'line', points: changedPoints(geometry.points, 2, random) };
  return { type: 'area', rings: geometry.rings.map((ring) => changedPoints(ring, 3, random)) };
}

function changedPoints(points: readonly SitePoint[], least: number, random: Random): readonly SitePoint[] {
  const chosen = pick(points, random);
  const chance = random();
  return points.flatMap((point) => {
    if (point !== chosen) return [point];
    if (chance < 0.5) return [shift(point, random)];
    if (chance < 0.75 || points.length <= least) return [point, shift(point, random)];
    return [];
  });
}

function changeBuffer(plan: Plan, random: Random): Plan {
  return withFeature(plan, random, (feature) => ({ ...feature, buffer: Math.round(random() * 60) }));
}

/** What says nothing about clearance: no finding may come or go by it. */
function nameFeature(plan: Plan, random: Random): Plan {
  return withFeature(plan, random, (feature) => ({ ...feature, name: 'Pond', authority: 'the county' }));
}

function addFeature(plan: Plan, random: Random): Plan {
  const at = pointToMillimetre({ x: random() * 1400, y: random() * 1400 });
  const feature: Feature = {
    id: `n${plan.site.features.length}-${Math.floor(random() * 1e6)}`,
    kind: pick(['public road', 'utility', 'easement'] as const, random) ?? 'utility',
    geometry: { type: 'line', points: [at, shift(at, random), shift(at, random)] },
    allows: { carry: random() < 0.5, walk: random() < 0.5, mow: false, build: false },
    buffer: random() * 20,
  };
  return { ...plan, site: { ...plan.site, features: [...plan.site.features, feature] } };
}

/** Imported lines may come in another order: nothing follows from that. */
function orderFeatures(plan: Plan): Plan {
  return { ...plan, site: { ...plan.site, features: [...plan.site.features].reverse() } };
}

/** A second house to begin from; loops may go to it, or lose theirs. */
function changeBases(plan: Plan, random: Random): Plan {
  const { bases } = plan.site;
  const at = pointToMillimetre({ x: random() * 1400, y: random() * 1400 });
  const next = bases.length > 1 ? bases.slice(0, 1) : [...bases, { id: 'hut', name: 'Hut', apron: at, footprints: [] }];
  const routings = plan.routings.map((routing) => ({
    ...routing,
    loops: routing.loops.map(({ base: _, ...loop }) => (random() < 0.5 ? { ...loop, base: 'hut' } : loop)),
  }));
  return { ...plan, site: { ...plan.site, bases: next }, routings };
}

function addTeeSet(plan: Plan, random: Random): Plan {
  if (plan.teeSets.length > 5) return plan;
  const at = Math.floor(random() * (plan.teeSets.length + 1));
  const player = pick(['scratch man', 'bogey man', 'scratch woman', 'bogey woman'] as const, random) ?? 'bogey man';
  const set = { id: `s${Math.floor(random() * 1e6)}`, name: 'More', player };
  return { ...plan, teeSets: [...plan.teeSets.slice(0, at), set, ...plan.teeSets.slice(at)] };
}

function removeTeeSet(plan: Plan, random: Random): Plan {
  const chosen = pick(plan.teeSets, random);
  return plan.teeSets.length < 2 ? plan : { ...plan, teeSets: plan.teeSets.filter((set) => set !== chosen) };
}

/** For tests: changes to the land and to the tee sets. */
export const SITE_EDITS: readonly ((plan: Plan, random: Random) => Plan)[] = [
  moveCorner,
  changeBuffer,
  nameFeature,
  addFeature,
  orderFeatures,
  changeBases,
  addTeeSet,
  removeTeeSet,
];
