import { type Box, boundsOf, boxesMeet } from '@loopwright/geometry';
import type { HoleId, Plan, Routing, SitePoint } from '@loopwright/model';
import type { HoleReach } from '../clearance/hole-reach.ts';
import { checkWalkFeatures } from '../clearance/walk-features.ts';
import { checkWalkPast } from '../clearance/walks.ts';
import type { Finding, WalkFigures } from '../figures.ts';
import { checkFeatureCrossings, checkLineCrossings } from '../walk/crossing-findings.ts';
import { asCrossing, type FeatureCrossing, featureCrossings } from '../walk/feature-crossings.ts';
import { type CrossedLine, lineCrossings } from '../walk/line-crossings.ts';
import { type WalkEnd, type WalkPath, walkBetween } from '../walk/walk-between.ts';
import { type EndName, type PlannedWalk, walkKey, walksOf } from '../walk/walk-plan.ts';
import type { BoardInputs } from './board-inputs.ts';
import type { HoleStage } from './hole-stage.ts';
import { openMemory } from './memory.ts';

export interface WalkStage {
  /** In playing order. */
  readonly walks: readonly WalkFigures[];
  readonly byKey: ReadonlyMap<string, WalkFigures>;
  /** What the walks cross, and what they pass too near. Not their length: that depends on the round. */
  readonly findings: readonly Finding[];
}

interface Walked {
  readonly walk: WalkFigures;
  readonly findings: readonly Finding[];
}

interface Way {
  readonly path: WalkPath;
  readonly box: Box;
  readonly features: readonly FeatureCrossing[];
}

/** What a walk passes too near, kept for as long as walk and hole are what they were. A hole's reach knows its limits. */
type Passes = WeakMap<WalkFigures, WeakMap<HoleReach, readonly Finding[]>>;

const NOTHING: readonly Finding[] = [];
const NO_WAYPOINTS: readonly SitePoint[] = [];

/** The walks of a routing, each worked out anew only when an end of it moved or something by its way did. */
export function openWalkStage() {
  const ways = openMemory<Way | undefined>();
  const walked = openMemory<Walked>();
  const past: Passes = new WeakMap();
  return (plan: Plan, routing: Routing, order: readonly HoleId[], holes: HoleStage, board: BoardInputs): WalkStage => {
    const lines = order.flatMap((id) => holes.line(id) ?? []);
    const reaches = order.flatMap((id) => holes.reach(id) ?? []);
    const walks: WalkFigures[] = [];
    const findings: Finding[] = [];
    const byKey = new Map<string, WalkFigures>();
    for (const planned of walksOf(plan, routing)) {
      const way = wayOf(planned, holes, board);
      if (!way || byKey.has(way.path.key)) continue;
      const known = crossed(way, lines, board);
      walks.push(known.walk);
      byKey.set(known.walk.key, known.walk);
      findings.push(...known.findings);
      for (const hole of reaches) findings.push(...passed(known.walk, way.box, hole, board));
    }
    for (const memory of [ways, walked]) memory.forgetUnused();
    return { walks, byKey, findings };
  };

  function wayOf(planned: PlannedWalk, holes: HoleStage, { features }: BoardInputs): Way | undefined {
    const from = endOf(planned.from, holes);
    const to = endOf(planned.to, holes);
    const waypoints = 'hole' in planned.from ? (holes.holes.get(planned.from.hole)?.waypoints ?? NO_WAYPOINTS) : [];
    if (!from || !to) return undefined;
    const inputs = [planned.loop, placeOf(from), placeOf(to), features, ...waypoints];
    return ways.recall(walkKey(planned), inputs, () => {
      const path = walkBetween(planned.loop, from, to, waypoints);
      return path && { path, box: boundsOf(path.path), features: featureCrossings(path.path, features) };
    });
  }

  function crossed({ path, box, features }: Way, lines: readonly CrossedLine[], board: BoardInputs): Walked {
    const { settings, limits } = board;
    const near = lines.filter((line) => boxesMeet(box, line.box));
    return walked.recall(path.key, [path, settings, board.features, ...near], () => {
      const crossings = [...lineCrossings(path, near, settings), ...features.map(asCrossing)];
      const walk = { ...path, crossings };
      const figures = new Map(near.map((line) => [line.figures.id, line.figures]));
      const findings = [
        ...checkLineCrossings(walk, figures, settings),
        ...checkFeatureCrossings(walk, features, settings),
        ...checkWalkFeatures(walk, board.features, limits),
      ];
      return { walk, findings };
    });
  }

  function passed(walk: WalkFigures, box: Box, hole: HoleReach, { limits }: BoardInputs): readonly Finding[] {
    if (!boxesMeet(box, hole.near) && !boxesMeet(box, hole.fanBox)) return NOTHING;
    let holes = past.get(walk);
    if (!holes) {
      holes = new WeakMap();
      past.set(walk, holes);
    }
    let findings = holes.get(hole);
    if (!findings) {
      findings = checkWalkPast(walk, hole, limits);
      holes.set(hole, findings);
    }
    return findings;
  }
}

function endOf(end: EndName, holes: HoleStage): WalkEnd | undefined {
  if ('base' in end) return { base: end.base.id, apron: end.base.apron };
  const figures = holes.figures.get(end.hole);
  return figures && { hole: end.hole, figures };
}

/** What the walk depends on at one end, by identity. */
function placeOf(end: WalkEnd): unknown {
  return 'hole' in end ? end.figures : end.apron;
}
