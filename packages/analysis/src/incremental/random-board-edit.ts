import type { Plan, SettingKey } from '@loopwright/model';
import { pointToMillimetre, SETTING_KEYS, SETTINGS } from '@loopwright/model';
import { pick, type Random, shift } from './random-pick.ts';

function changeSetting(plan: Plan, random: Random): Plan {
  const key: SettingKey = pick(SETTING_KEYS, random) ?? 'long-walk-look';
  const { least, most } = SETTINGS[key];
  return { ...plan, settings: { ...plan.settings, [key]: Math.round(least + random() * (most - least)) } };
}

function resetSettings(plan: Plan): Plan {
  return { ...plan, settings: {} };
}

function moveFeature(plan: Plan, random: Random): Plan {
  const chosen = pick(plan.site.features, random);
  const features = plan.site.features.map((feature) =>
    feature === chosen
      ? { ...feature, geometry: { type: 'point', at: shift({ x: 700, y: 700 }, random) } as const }
      : feature,
  );
  return { ...plan, site: { ...plan.site, features } };
}

function removeFeature(plan: Plan, random: Random): Plan {
  const chosen = pick(plan.site.features, random);
  return { ...plan, site: { ...plan.site, features: plan.site.features.filter((feature) => feature !== chosen) } };
}

/** One feature becomes a practice range, or is allowed what it was not. */
function changeFeature(plan: Plan, random: Random): Plan {
  const chosen = pick(plan.site.features, random);
  const features = plan.site.features.map((feature) => {
    if (feature !== chosen) return feature;
    return random() < 0.5
      ? ({ ...feature, kind: 'range' } as const)
      : { ...feature, buffer: 20, allows: { carry: true, walk: true, mow: true, build: false } };
  });
  return { ...plan, site: { ...plan.site, features } };
}

function moveBoundary(plan: Plan, random: Random): Plan {
  const { boundary, ...site } = plan.site;
  if (!boundary || random() < 0.1) return { ...plan, site };
  const outlines = boundary.outlines.map((ring) => ring.map((corner) => shift(corner, random)));
  return { ...plan, site: { ...site, boundary: { ...boundary, outlines, tolerance: random() * 10 } } };
}

function moveBase(plan: Plan, random: Random): Plan {
  const bases = plan.site.bases.map((base) => ({ ...base, apron: shift(base.apron, random) }));
  return { ...plan, site: { ...plan.site, bases } };
}

function addMark(plan: Plan, random: Random): Plan {
  const at = pointToMillimetre({ x: random() * 1400, y: random() * 1400 });
  const mark = { id: `m${plan.site.marks.length}`, kind: 'green site', at, verdict: 'natural' } as const;
  return { ...plan, site: { ...plan.site, marks: [...plan.site.marks, mark] } };
}

/** Another player, another order, or one tee set fewer. */
function changeTeeSets(plan: Plan, random: Random): Plan {
  const [first, ...others] = plan.teeSets;
  if (!first) return plan;
  if (random() < 0.3 && others.length > 0) return { ...plan, teeSets: others };
  if (random() < 0.5) return { ...plan, teeSets: [...others, first] };
  return { ...plan, teeSets: [{ ...first, player: 'bogey woman' }, ...others] };
}

/** For tests: changes to what all holes have in common. */
export const BOARD_EDITS: readonly ((plan: Plan, random: Random) => Plan)[] = [
  changeSetting,
  resetSettings,
  moveFeature,
  removeFeature,
  changeFeature,
  moveBoundary,
  moveBase,
  addMark,
  changeTeeSets,
];
