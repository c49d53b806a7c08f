import type { Finding } from '../figures.ts';
import { withoutRepeats } from '../findings/round-finding.ts';
import type { RoundContext } from '../round-context.ts';
import { checkApproaches } from './approaches.ts';
import { checkBends } from './bends.ts';
import { checkLoopsApart } from './loops-apart.ts';
import { checkOpening } from './opening.ts';
import { checkParRuns } from './par-runs.ts';
import { checkParThreeLengths } from './par-three-lengths.ts';
import { checkParThreePlaces } from './par-three-places.ts';
import { checkQueues } from './queues.ts';
import { checkReturns } from './returns.ts';
import { roundRhythm } from './round-rhythm.ts';
import { checkShortHoles } from './short-holes.ts';
import { checkSiteMarks } from './site-marks.ts';
import { checkVerdicts } from './verdicts.ts';

/** How the holes of each round follow each other. Never a `stop`. Cost: a few passes over the holes of each round. */
export function checkRhythm(context: RoundContext): readonly Finding[] {
  const ofRounds = context.rounds.flatMap((round) => {
    const rhythm = roundRhythm(round, context);
    return [
      ...checkParRuns(rhythm),
      ...checkParThreePlaces(rhythm),
      ...checkOpening(rhythm),
      ...checkShortHoles(rhythm),
      ...checkApproaches(rhythm),
      ...checkBends(rhythm),
      ...checkParThreeLengths(rhythm),
      ...checkQueues(rhythm),
      ...checkLoopsApart(rhythm, context),
      ...checkReturns(rhythm, context),
    ];
  });
  return withoutRepeats([...ofRounds, ...checkVerdicts(context), ...checkSiteMarks(context)]);
}
