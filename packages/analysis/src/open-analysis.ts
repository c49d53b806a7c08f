import type { Plan, Routing, RoutingId } from '@loopwright/model';
import { numberHoles } from '@loopwright/model';
import { checkDirection } from './direction/check-direction.ts';
import type { Analysis, Finding } from './figures.ts';
import { sortFindings } from './findings/sort-findings.ts';
import { openBoardInputs } from './incremental/board-inputs.ts';
import { openFeatureStage } from './incremental/feature-stage.ts';
import { openHoleStage } from './incremental/hole-stage.ts';
import { openPairStage } from './incremental/pair-stage.ts';
import { openTotalStage } from './incremental/total-stage.ts';
import { openWalkStage } from './incremental/walk-stage.ts';
import { checkRhythm } from './rhythm/check-rhythm.ts';
import type { RoundContext } from './round-context.ts';
import { checkWalks } from './walk/check-walks.ts';

/** Works out a routing, and remembers what did not change for the next time. */
export interface FrameAnalysis {
  /**
   * Everything the frame analysis says about one routing, equal to a run from nothing.
   *
   * Holes, features and bases that keep their identity between plans are not worked out again; nor are walks, pairs
   * and totals of which no part changed.
   *
   * @throws RangeError when the plan has no such routing: ask the plan first
   */
  analyse(plan: Plan, routing: RoutingId): Analysis;
}

/** Checks of the round as a whole, each run anew: they are cheap and depend on every hole. */
const ROUND_CHECKS: readonly ((context: RoundContext) => readonly Finding[])[] = [
  checkWalks,
  checkDirection,
  checkRhythm,
];

/**
 * The analysis that runs in the frame, with an empty memory of its own. Pure but for that memory; remembers the last
 * two states of everything, so one of them can serve a plan before and after a drag by turns.
 */
export function openAnalysis(): FrameAnalysis {
  const boardOf = openBoardInputs();
  const holesOf = openHoleStage();
  const walksOf = openWalkStage();
  const pairsOf = openPairStage();
  const featuresOf = openFeatureStage();
  const totalsOf = openTotalStage();
  return {
    analyse(plan, id) {
      const routing = routingOf(plan, id);
      const board = boardOf(plan);
      const holes = holesOf(routing, board);
      const order = routing.loops.flatMap((loop) => loop.holes.filter((hole) => holes.figures.has(hole)));
      const walked = walksOf(plan, routing, order, holes, board);
      const { walks } = walked;
      const totals = totalsOf(plan, routing, holes, walked, board);
      const { settings, features } = board;
      const { figures } = holes;
      const numbers = numberHoles(routing);
      const context = {
        plan,
        routing,
        settings,
        figures,
        holes: holes.holes,
        walks,
        order,
        ...totals,
        numbers,
        features,
      };
      const findings = [
        ...pairsOf(routing, order, holes, board),
        ...featuresOf(plan, order, holes, board),
        ...walked.findings,
        ...ROUND_CHECKS.flatMap((check) => check(context)),
      ];
      return { routing: id, holes: figures, walks, ...totals, findings: sortFindings(findings, order) };
    },
  };
}

function routingOf(plan: Plan, id: RoutingId): Routing {
  const routing = plan.routings.find((candidate) => candidate.id === id);
  if (!routing) throw new RangeError('analyse: the plan has no such routing');
  return routing;
}
