export { CLUB_SHARES, clubFor } from './card/club.ts';
export { corridorHalfWidthAt } from './card/corridor.ts';
export type { FullShots } from './card/full-shots.ts';
export { fullShots } from './card/full-shots.ts';
export { lengthForRating, lengthRating, slopeFrom } from './card/length-rating.ts';
export type { Reach } from './card/model-player.ts';
export { reachOf, sexOf } from './card/model-player.ts';
export { likelyPar, parsByLength } from './card/par-by-length.ts';
export type { ParRange, ParTable } from './card/par-table.ts';
export { PAR_TABLE_METRES, PAR_TABLE_YARDS } from './card/par-table.ts';
export { playedLength } from './card/rose.ts';
export { tangent } from './clearance/limits.ts';
export { shotFans } from './clearance/shots.ts';
export type {
  Analysis,
  Bend,
  CorridorStation,
  CrossingPlace,
  Finding,
  FindingPlace,
  FindingUnit,
  HoleBeforeFans,
  HoleFigures,
  LengthRating,
  LoopFigures,
  RoundFigures,
  Severity,
  Sex,
  ShotFan,
  TeeFigures,
  TotalLengths,
  WalkCrossing,
  WalkFigures,
} from './figures.ts';
export type { DispositionState } from './findings/disposition-of.ts';
export { dispositionOf } from './findings/disposition-of.ts';
export type { FrameAnalysis } from './open-analysis.ts';
export { openAnalysis } from './open-analysis.ts';
export type { MarkPart } from './rhythm/mark-parts.ts';
export type { MarkUse, MarkUses } from './rhythm/mark-uses.ts';
export { markUses, openMarkUses } from './rhythm/mark-uses.ts';
export type { OneGroupHole, QueueWait } from './rhythm/queue-wait.ts';
export { queueWaits } from './rhythm/queue-wait.ts';
export { compareAnalyses } from './ripple/compare-analyses.ts';
export type { FigureChange, FindingChange, Ripple } from './ripple/ripple.ts';
export { steadyRipple } from './ripple/steady-ripple.ts';
export { greenEdge } from './walk/green-edge.ts';
export { walkBetweenLoops } from './walk/length-findings.ts';
export { naismithTime } from './walk/naismith.ts';
export { walkingSpeed } from './walk/walking-speed.ts';
