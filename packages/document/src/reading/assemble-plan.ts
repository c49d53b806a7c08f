import { LIMITS, type Plan, type Routing, type Site, type Sketch } from '@loopwright/model';
import { frozen, isSameValue } from '../plain-value.ts';
import { routingsFrom } from './assemble-routing.ts';
import { inOrder, isSameIds, keepList } from './in-order.ts';
import type { Read } from './part-reader.ts';
import type { ReadRoots } from './read-roots.ts';

/** The plan of a document in which nothing is decided. */
export const EMPTY_PLAN: Plan = frozen({
  loopwright: 1,
  site: { name: 'Unnamed site', north: 0, bases: [], marks: [], features: [], images: [] },
  teeSets: [],
  routings: [],
  settings: {},
  dispositions: [],
});

/** The plan that a reading makes. What no collection changed keeps its identity; the plan itself does if nothing did. */
export function planFrom(read: ReadRoots, before: ReadRoots, plan: Plan): Plan {
  const list = <T>(
    groups: ReadonlyMap<string, Read<T>>,
    old: ReadonlyMap<string, Read<T>>,
    kept: readonly T[],
    most: number,
  ) => (groups === old ? kept : keepList(kept, inOrder(groups, most)));
  const site = siteFrom(read, before, plan.site, list);
  const teeSets = list(read.teeSets, before.teeSets, plan.teeSets, LIMITS.teeSets);
  const routings = routingsFrom(read, before, plan.routings, {
    now: { bases: site.bases, teeSets },
    old: { bases: plan.site.bases, teeSets: plan.teeSets },
  });
  const settings = read.settings.get('')?.value ?? plan.settings;
  const isDecidedAsBefore = read.dispositions === before.dispositions && isSameIds(routings, plan.routings);
  const dispositions = isDecidedAsBefore ? plan.dispositions : keepList(plan.dispositions, decidedOf(read, routings));
  const isSame =
    site === plan.site &&
    teeSets === plan.teeSets &&
    routings === plan.routings &&
    settings === plan.settings &&
    dispositions === plan.dispositions;
  return isSame ? plan : Object.freeze({ loopwright: 1, site, teeSets, routings, settings, dispositions });
}

/** What was decided about findings of routings that are there. */
function decidedOf(read: ReadRoots, routings: readonly Routing[]): Plan['dispositions'] {
  const there = new Set(routings.map(({ id }) => id));
  return frozen(inOrder(read.dispositions, LIMITS.dispositions).filter(({ routing }) => there.has(routing)));
}

type ListOf = <T>(
  groups: ReadonlyMap<string, Read<T>>,
  old: ReadonlyMap<string, Read<T>>,
  kept: readonly T[],
  most: number,
) => readonly T[];

const NO_SKETCHES: readonly Sketch[] = Object.freeze([]);

function siteFrom(read: ReadRoots, before: ReadRoots, site: Site, list: ListOf): Site {
  const frame = read.site.get('')?.value ?? { name: site.name, north: site.north };
  const sketches = list(read.sketches, before.sketches, site.sketches ?? NO_SKETCHES, LIMITS.sketches);
  const next: Site = {
    ...frame,
    bases: list(read.bases, before.bases, site.bases, LIMITS.bases),
    marks: list(read.marks, before.marks, site.marks, LIMITS.siteMarks),
    features: list(read.features, before.features, site.features, LIMITS.features),
    images: list(read.images, before.images, site.images, LIMITS.imageLayers),
    // Left out when there are none, so that boards from before there were any keep their fingerprints.
    ...(sketches.length > 0 && { sketches }),
  };
  const isSame =
    next.bases === site.bases &&
    next.marks === site.marks &&
    next.features === site.features &&
    next.images === site.images &&
    next.sketches === site.sketches &&
    (read.site === before.site || isSameValue(next, site));
  return isSame ? site : Object.freeze(next);
}
