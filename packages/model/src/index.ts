export type { Disposition, DispositionKind, FindingKey } from './disposition.ts';
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
  TeeSetId,
  TurnPointId,
} from './ids.ts';
export { ID_PATTERN, isId, makeId } from './ids.ts';
export { pointToMillimetre, toMillimetre } from './millimetre.ts';
export { holeOf, loopsOf, numberHoles, playingOrder } from './numbering.ts';
export type { Loop, ModelPlayer, Plan, Round, Routing, TeeSet } from './plan.ts';
export { seededRandom } from './random.ts';
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
} from './site.ts';
export type { CanvasPoint, Ring, SitePoint } from './space.ts';
export type { LengthUnit } from './units.ts';
export { cardLength, METRES_PER_FOOT, METRES_PER_YARD, metresFromYards, yardsFrom } from './units.ts';
