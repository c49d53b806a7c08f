import { closestOnPolyline, distanceBetween } from '@loopwright/geometry';
import type { FindingKey, HoleId, PartId, SitePoint, TeeSetId } from '@loopwright/model';
import type { FindingView } from '../drawing/finding-view.ts';
import type { HoleView } from '../drawing/hole-view.ts';
import type { WalkView } from '../drawing/walk-view.ts';
import type { Grip, GripsOf } from './grip.ts';
import type { LandHit, LandTargets } from './land/hit-site.ts';

/** What lies under the pointer, and can be taken hold of or picked out. */
export type Hit =
  | { readonly kind: 'part'; readonly hole: HoleId; readonly part: PartId; readonly at: SitePoint }
  | { readonly kind: 'grip'; readonly hole: HoleId; readonly grip: Grip }
  | { readonly kind: 'number'; readonly hole: HoleId }
  | { readonly kind: 'finding'; readonly finding: FindingKey }
  | { readonly kind: 'centreline'; readonly hole: HoleId }
  | { readonly kind: 'walk'; readonly walk: string }
  | LandHit;

/** What is on the drawing to be hit. */
export interface Targets {
  readonly holes: readonly HoleView[];
  readonly numbers: ReadonlyMap<HoleId, SitePoint>;
  readonly walks: readonly WalkView[];
  readonly findings: readonly FindingView[];
  readonly findingPlaces: ReadonlyMap<FindingKey, SitePoint>;
  /** Only its tees are taken hold of, and those drawn with it for the hole picked out. */
  readonly teeSet: TeeSetId;
  readonly selected: HoleId | undefined;
  /** What else is taken hold of on the hole picked out; nothing while several are. */
  readonly grips?: GripsOf;
  /** What lies on the land; absent where only holes are hit. */
  readonly land?: LandTargets;
}

/** Half the width of what can be hit, in pixels: a hand needs 24 px across at least, a finger more. */
export const REACH = { mouse: 12, pen: 14, touch: 22 } as const;
export type PointerKind = keyof typeof REACH;

/** Lines are hit within this share of the reach: they are everywhere. */
const LINE_SHARE = 0.55;

/**
 * What is under a pointer, in the order a hand means it: a grip of what is picked out, a part of the hole picked out, the
 * nearest of numbers, parts and findings, a sign on the land, a centreline, a walk, a line on the land. Only where there
 * is nothing else an area is hit inside.
 *
 * @param reach  in metres on the ground, from `REACH` and the scale
 */
export function hitAt(targets: Targets, at: SitePoint, reach: number): Hit | undefined {
  const own = targets.holes.filter(({ id }) => id === targets.selected);
  const { land } = targets;
  return (
    land?.grip(at, reach) ??
    nearest([...own.flatMap((hole) => pointsOf(hole, undefined, at)), ...grips(targets, at)], reach) ??
    nearest(
      own.flatMap((hole) => greenOf(hole, at)),
      reach,
    ) ??
    nearest([...numbers(targets, at), ...allParts(targets, at), ...findings(targets, at)], reach) ??
    land?.sign(at, reach) ??
    nearest(centrelines(targets, at), reach * LINE_SHARE) ??
    nearest(walks(targets, at), reach * LINE_SHARE) ??
    land?.line(at, reach * LINE_SHARE) ??
    land?.inside(at)
  );
}

interface Candidate {
  readonly hit: Hit;
  readonly distance: number;
}

function nearest(candidates: readonly Candidate[], reach: number): Hit | undefined {
  let best: Candidate | undefined;
  for (const candidate of candidates) {
    if (candidate.distance <= reach && (!best || candidate.distance < best.distance)) best = candidate;
  }
  return best?.hit;
}

/** Tees and turn points of a hole; of its tees only those of `teeSet`, or all. */
function pointsOf(hole: HoleView, teeSet: TeeSetId | undefined, pointer: SitePoint): readonly Candidate[] {
  const tees = hole.tees.filter((tee) => teeSet === undefined || tee.teeSet === teeSet);
  return [...tees, ...hole.turns].map(({ part, at }) => ({
    hit: { kind: 'part', hole: hole.id, part, at },
    distance: distanceBetween(pointer, at),
  }));
}

/** A green is hit anywhere on it. */
function greenOf({ id, green }: HoleView, pointer: SitePoint): readonly Candidate[] {
  if (!green) return [];
  const { at, reach } = green;
  const distance = Math.max(0, distanceBetween(pointer, at) - reach * 0.8);
  return [{ hit: { kind: 'part', hole: id, part: 'green', at }, distance }];
}

const allParts = ({ holes, teeSet }: Targets, at: SitePoint) =>
  holes.flatMap((hole) => [...pointsOf(hole, teeSet, at), ...greenOf(hole, at)]);

function grips({ grips }: Targets, pointer: SitePoint): readonly Candidate[] {
  if (!grips) return [];
  return grips.grips.map((grip) => ({
    hit: { kind: 'grip', hole: grips.hole, grip },
    distance: distanceBetween(pointer, grip.at),
  }));
}

const numbers = (targets: Targets, pointer: SitePoint): readonly Candidate[] =>
  [...targets.numbers].map(([hole, at]) => ({
    hit: { kind: 'number', hole },
    distance: distanceBetween(pointer, at),
  }));

const findings = (targets: Targets, pointer: SitePoint): readonly Candidate[] =>
  targets.findings.map(({ key, at }) => ({
    hit: { kind: 'finding', finding: key },
    distance: distanceBetween(pointer, targets.findingPlaces.get(key) ?? at),
  }));

const centrelines = (targets: Targets, pointer: SitePoint): readonly Candidate[] =>
  targets.holes
    .filter(({ centreline }) => centreline.length > 1)
    .map(({ id, centreline }) => ({
      hit: { kind: 'centreline', hole: id },
      distance: closestOnPolyline(pointer, centreline).distance,
    }));

const walks = (targets: Targets, pointer: SitePoint): readonly Candidate[] =>
  targets.walks.map(({ key, path }) => ({
    hit: { kind: 'walk', walk: key },
    distance: closestOnPolyline(pointer, path).distance,
  }));
