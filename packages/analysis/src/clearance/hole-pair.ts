import { boxesMeet } from '@loopwright/geometry';
import type { Finding } from '../figures.ts';
import { checkFans } from './fans.ts';
import { checkGreenAndTees, checkGreensApart } from './greens.ts';
import type { HoleReach } from './hole-reach.ts';
import { checkInCorridor } from './in-corridor.ts';
import { checkLandings, checkLandingsApart } from './landings.ts';
import type { ClearanceLimits } from './limits.ts';
import { checkLinesCross } from './lines-cross.ts';
import type { PairRelation } from './pair-relation.ts';
import { checkSpacing } from './spacing.ts';

const NONE: readonly Finding[] = [];

/**
 * Everything that can be too close between two holes. For `next`, the second is played straight after the first;
 * other pairs come in the order of their ids, so that a finding keeps its key when holes are renumbered.
 *
 * Every finding is given; which of a pair's findings is its one alarm is decided where all are gathered.
 *
 * Cost: two box tests for holes that are far apart, else a few microseconds.
 */
export function checkHolePair(
  first: HoleReach,
  second: HoleReach,
  relation: PairRelation,
  limits: ClearanceLimits,
): readonly Finding[] {
  const isNear = boxesMeet(first.near, second.box) || boxesMeet(second.near, first.box);
  const reaches = boxesMeet(first.fanBox, second.box);
  const isReached = boxesMeet(second.fanBox, first.box);
  if (!isNear && !reaches && !isReached) return NONE;
  const findings: Finding[] = [];
  if (isNear) addDistances(findings, first, second, relation, limits);
  if (reaches) findings.push(...checkFans(first, second, relation, limits));
  if (isReached) findings.push(...checkFans(second, first, relation, limits));
  return findings.length === 0 ? NONE : findings;
}

function addDistances(
  findings: Finding[],
  first: HoleReach,
  second: HoleReach,
  relation: PairRelation,
  limits: ClearanceLimits,
): void {
  findings.push(
    ...checkLinesCross(first, second, limits),
    ...checkSpacing(first, second, relation, limits),
    ...checkLandings(first, second, limits),
    ...checkLandings(second, first, limits),
    ...checkLandingsApart(first, second, limits),
    ...checkGreensApart(first, second, limits),
    ...checkGreenAndTees(first, second, relation, limits),
    ...checkGreenAndTees(second, first, 'other', limits),
    ...checkInCorridor(first, second, relation),
    ...checkInCorridor(second, first, relation),
  );
}
