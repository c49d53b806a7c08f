import type { NamedEdit, OutlineOf } from '@loopwright/document';
import {
  type Feature,
  type ImageLayer,
  makeId,
  type Plan,
  type Ring,
  type Site,
  type SitePoint,
} from '@loopwright/model';
import { pick, type Random, somewhere } from './random-pick.ts';

function triangle(random: Random): Ring {
  const { x, y } = somewhere(random);
  return [
    { x, y },
    { x: x + 60, y },
    { x: x + 60, y: y + 40 },
  ];
}

function newFeature(random: Random): Feature {
  return {
    id: makeId('f', random),
    kind: 'water',
    geometry: { type: 'area', rings: [triangle(random)] },
    allows: { carry: true, walk: false, mow: false, build: false },
    buffer: 5,
  };
}

/** An outline on the land with one of its corners. */
function corner(site: Site, random: Random): { readonly outline: OutlineOf; readonly at: SitePoint } | undefined {
  const outlines: { readonly outline: OutlineOf; readonly points: readonly SitePoint[] }[] = [
    ...(site.boundary?.outlines ?? []).map((points, ring) => {
      return { outline: { of: 'boundary', part: 'outlines', ring } as const, points };
    }),
    ...site.features.flatMap(({ id, geometry }) => {
      if (geometry.type !== 'area') return [];
      return geometry.rings.map((points, ring) => ({ outline: { of: 'feature', feature: id, ring } as const, points }));
    }),
  ];
  const chosen = pick(outlines, random);
  const at = chosen && pick(chosen.points, random);
  return chosen && at && { outline: chosen.outline, at };
}

/** Something a person might do to the land, by chance: mostly moving corners. */
export function randomSiteEdit(plan: Plan, random: Random): NamedEdit {
  const chance = random();
  if (random() < 0.3) return randomThing(plan, random);
  const found = corner(plan.site, random);
  if (found && chance < 0.3)
    return { edit: 'move vertex', outline: found.outline, from: found.at, to: somewhere(random) };
  if (found && chance < 0.4)
    return { edit: 'add vertex', outline: found.outline, after: found.at, at: somewhere(random) };
  if (found && chance < 0.46) return { edit: 'remove vertex', outline: found.outline, at: found.at };
  if (found && chance < 0.5) return { edit: 'move outline', outline: found.outline, by: { x: 3, y: -2 } };
  const feature = pick(plan.site.features, random);
  if (feature && chance < 0.58)
    return { edit: 'change feature', feature: feature.id, to: { buffer: Math.round(random() * 20) } };
  if (feature && chance < 0.62) return { edit: 'remove features', features: [feature.id] };
  if (chance < 0.7) return { edit: 'add features', features: [newFeature(random)] };
  if (chance < 0.75)
    return { edit: 'draw boundary', boundary: { outlines: [triangle(random)], inner: [], tolerance: 0 } };
  return chance < 0.85 ? randomSketch(plan, random) : randomTeeSet(plan, random);
}

function randomSketch(plan: Plan, random: Random): NamedEdit {
  const sketches = plan.site.sketches ?? [];
  const sketch = pick(sketches, random);
  if (sketch && random() < 0.3) return { edit: 'change sketch', sketch: sketch.id, to: { kept: !sketch.kept } };
  if (sketch && random() < 0.4) return { edit: 'wipe sketches', sketches: sketches.map(({ id }) => id) };
  const shape = { kind: 'measured line', points: [somewhere(random), somewhere(random)] } as const;
  return { edit: 'add sketch', sketch: { id: makeId('s', random), shape, by: 'ada', ink: 1, kept: false } };
}

function randomTeeSet(plan: Plan, random: Random): NamedEdit {
  const chance = random();
  const [set, other] = [pick(plan.teeSets, random), pick(plan.teeSets, random)];
  if (!set || (plan.teeSets.length < 5 && chance < 0.4)) {
    const teeSet = { id: makeId('t', random), name: 'More', player: 'bogey man' } as const;
    return { edit: 'add tee set', teeSet, after: set?.id ?? 'first' };
  }
  if (chance < 0.6) return { edit: 'change tee set', teeSet: set.id, to: { name: `Set ${Math.floor(random() * 9)}` } };
  // Drawn holes begin at the back tee: without that set nobody could go on.
  if (chance < 0.85 || set.id === 'back') {
    return { edit: 'order tee set', teeSet: set.id, after: other?.id ?? 'first' };
  }
  return { edit: 'remove tee set', teeSet: set.id };
}

/** Something done to bases, site marks or images, or to the site as a whole. */
function randomThing({ site }: Plan, random: Random): NamedEdit {
  const chance = random();
  const [base, mark] = [pick(site.bases, random), pick(site.marks, random)];
  if (base && chance < 0.15) return { edit: 'change base', base: base.id, to: { apron: somewhere(random) } };
  if (base && chance < 0.2) return { edit: 'remove base', base: base.id };
  if (chance < 0.3) {
    const added = { id: makeId('b', random), name: 'House', apron: somewhere(random), footprints: [triangle(random)] };
    return { edit: 'add base', base: added };
  }
  if (mark && chance < 0.45) return { edit: 'change mark', mark: mark.id, to: { at: somewhere(random) } };
  if (mark && chance < 0.5) return { edit: 'remove mark', mark: mark.id };
  if (chance < 0.6) {
    const added = { kind: 'green site', at: somewhere(random), verdict: 'natural' } as const;
    return { edit: 'add mark', mark: { ...added, id: makeId('m', random) } };
  }
  if (chance < 0.66) return { edit: 'set units', units: random() < 0.5 ? 'yards' : 'metres' };
  if (chance < 0.7) return { edit: 'name site', name: `Site ${Math.floor(random() * 9)} ${'😀'.repeat(10_000)}` };
  return randomImage(site, random);
}

function randomImage({ images }: Site, random: Random): NamedEdit {
  const chance = random();
  const [image, other] = [pick(images, random), pick(images, random)];
  if (!image || chance < 0.3) return { edit: 'add image', image: newImage(random) };
  if (chance < 0.5) return { edit: 'change image', image: image.id, to: { opacity: Math.round(random() * 10) / 10 } };
  if (chance < 0.75) return { edit: 'order image', image: image.id, after: other?.id ?? 'first' };
  if (chance < 0.85) return { edit: 'remove image', image: image.id };
  return { edit: 'replace image', image: image.id, blob: 'b'.repeat(64), widthPixels: 320, heightPixels: 200 };
}

function newImage(random: Random): ImageLayer {
  const { x, y } = somewhere(random);
  return {
    ...{ id: makeId('i', random), blob: 'a'.repeat(64), widthPixels: 160, heightPixels: 100 },
    ...{ placement: [0.5, 0, x, 0, -0.5, y], opacity: 1, name: 'aerial.png', scaledBy: 'two points' },
  };
}
