import { type Plan, seededRandom } from '@loopwright/model';
import { moveGreen } from '../src/incremental/random-hole-edit.ts';
import { randomPlan } from '../src/incremental/random-plan.ts';
import { openAnalysis } from '../src/open-analysis.ts';
import { compareAnalyses } from '../src/ripple/compare-analyses.ts';
import { turfFull, turfMemory, turfMoved } from './turf-rival.ts';

/** What the frame bench times, each with a checksum of its result. */
export interface FrameWork {
  full(): number;
  moved(step: number): number;
  ripple(step: number): number;
  turfFull(): number;
  turfMoved(step: number): number;
}

/** Plans of one drag: a green that wanders while everything else keeps its identity. */
const STEPS = 200;

/** An invented plan from a fixed seed: 18 holes, 40 features, a boundary, three tee sets. */
export function frameWork(): FrameWork {
  const plan = randomPlan(seededRandom(20_260_501));
  const drag: readonly Plan[] = Array.from({ length: STEPS }, (_, step) => moveGreen(plan, seededRandom(step + 1)));
  const stepOf = (step: number) => drag[step % STEPS] ?? plan;
  const warm = openAnalysis();
  const before = warm.analyse(plan, 'r');
  const memory = turfMemory(plan, before);
  const movedHoles = drag.map((moved) => movedHole(plan, moved));
  return {
    full: () => openAnalysis().analyse(plan, 'r').findings.length,
    moved: (step) => warm.analyse(stepOf(step), 'r').findings.length,
    ripple: (step) => compareAnalyses(warm.analyse(plan, 'r'), warm.analyse(stepOf(step), 'r')).findings.length,
    turfFull: () => turfFull(plan, before),
    turfMoved: (step) => {
      const { place, figures } = movedHoles[step % STEPS] ?? { place: 0, figures: undefined };
      return figures ? turfMoved(figures, place, memory) : 0;
    },
  };
}

/** The hole that a step of the drag moved, as worked out beforehand: the rival is given its figures. */
function movedHole(plan: Plan, moved: Plan) {
  const holes = plan.routings[0]?.holes ?? [];
  const place = moved.routings[0]?.holes.findIndex((hole, at) => hole !== holes[at]) ?? -1;
  const id = holes[place]?.id;
  return { place, figures: id === undefined ? undefined : openAnalysis().analyse(moved, 'r').holes.get(id) };
}
