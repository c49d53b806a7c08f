export { canonicalJson } from './canonical-json.ts';
export type { Disposition, DispositionKind, FindingKey } from './disposition.ts';
export { presetOf } from './feature-presets.ts';
export type {
  CorridorWidths,
  Green,
  Hole,
  ParChoice,
  Relation,
  RelationKind,
  Seat,
  TurnPoint,
  Verdict,
} from './hole.ts';
export type {
  BaseId,
  FeatureId,
  HoleId,
  ImageLayerId,
  LoopId,
  PartId,
  RoundId,
  RoutingId,
  SiteMarkId,
  SketchId,
  TeeSetId,
  TurnPointId,
} from './ids.ts';
export { ID_PATTERN, isId, makeId } from './ids.ts';
export { pointToMillimetre, toMillimetre } from './millimetre.ts';
export type { NewPlan, StartingHoles } from './new-plan.ts';
export { newPlan, STARTING_HOLES } from './new-plan.ts';
export { holeOf, loopsOf, numberHoles, playingOrder } from './numbering.ts';
export { isOrderKey, orderKeyAt } from './order-key.ts';
export { parseDisposition } from './parse/disposition.ts';
export { FEATURE_KINDS, parseAllows, parseFeature, parseFeatureGeometry } from './parse/feature.ts';
export type { Fields } from './parse/fields.ts';
export { isFields, isList, parseEach, parseSome, parseWord } from './parse/fields.ts';
export type { GreenShape } from './parse/green.ts';
export { parseGreen, parseGreenShape } from './parse/green.ts';
export { parseHole } from './parse/hole.ts';
export {
  parseCorridor,
  parseParChoice,
  parsePart,
  parseRelation,
  parseSeat,
  parseTurnPoint,
  parseVerdict,
} from './parse/hole-parts.ts';
export { LIMITS } from './parse/limits.ts';
export { parseNumber } from './parse/number.ts';
export type { ParsedPlan } from './parse/plan.ts';
export { parseModelPlayer, parsePlan, parseSettingValue, parseTeeSet } from './parse/plan.ts';
export { parsePoint, parsePoints, parseRing } from './parse/point.ts';
export type { LoopFrame } from './parse/routing.ts';
export { parseLoop, parseRound } from './parse/routing.ts';
export {
  parseBase,
  parseBoundary,
  parseGrid,
  parseImageLayer,
  parseLengthUnit,
  parseLocation,
  parseMarkKind,
  parseMarkVerdict,
  parsePlacement,
  parseScaledBy,
  parseSiteMark,
} from './parse/site-parts.ts';
export { parseInk, parseSketch, parseSketchShape } from './parse/sketch.ts';
export { parseLines, parseName, parseText } from './parse/text.ts';
export type { Loop, ModelPlayer, Plan, Round, Routing, TeeSet } from './plan.ts';
export { seededRandom } from './random.ts';
export { holesSeatedIn, spareHoles } from './seating.ts';
export type { SettingKey, SettingOverrides, Settings } from './settings/index.ts';
export { isSettingKey, SETTING_KEYS, SETTINGS, settingsOf } from './settings/index.ts';
export type { SettingDefinition, SettingGroup, SettingUnit, SourceStatus } from './settings/setting.ts';
export type {
  Allows,
  Base,
  Boundary,
  Feature,
  FeatureGeometry,
  FeatureKind,
  ImageLayer,
  Site,
  SiteLocation,
  SiteMark,
  SurveyGrid,
} from './site.ts';
export type { RingCentre, Sketch, SketchShape } from './sketch.ts';
export type { CanvasPoint, Ring, SitePoint } from './space.ts';
export type { LengthUnit } from './units.ts';
export { cardLength, METRES_PER_FOOT, METRES_PER_YARD, metresFromYards, yardsFrom } from './units.ts';
