import { type Plan, seededRandom } from '@loopwright/model';
import { moveGreen } from '../src/incremental/random-hole-edit.ts';
import { randomPlan } from '../src/incremental/random-plan.ts';
import { openAnalysis } from '../src/open-analysis.ts';
import { compareAnalyses } from '../src/ripple/compare-analyses.ts';
import { turfFull, turfHoles, turfMoved } from './turf-rival.ts';

/** What the frame bench times, each with a checksum of its result. */
export interface FrameWork {
  full(): number;
  moved(step: number): number;
  ripple(step: number): number;
  turfFull(): number;
  turfMoved(): number;
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
  const holes = [...before.holes.values()];
  const others = turfHoles(holes.slice(1));
  return {
    full: () => openAnalysis().analyse(plan, 'r').findings.length,
    moved: (step) => warm.analyse(stepOf(step), 'r').findings.length,
    ripple: (step) => compareAnalyses(warm.analyse(plan, 'r'), warm.analyse(stepOf(step), 'r')).findings.length,
    turfFull: () => turfFull(plan, before),
    turfMoved: () => (holes[0] ? turfMoved(plan, holes[0], others, before) : 0),
  };
}
