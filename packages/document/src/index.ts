export type {
  Clock,
  Connection,
  ConnectOptions,
  DoneStep,
  EditResult,
  NamedEdit,
  Person,
  PlanDocument,
  Presence,
  PresenceState,
  PutBackResult,
  SavedState,
  Stop,
  UndoResult,
  UnreadField,
} from './contract.ts';
export { isHoleEdit, isRoutingEdit, isSiteEdit } from './edits/families.ts';
export type { HoleEdit } from './edits/hole-edit.ts';
export { holesTouchedBy } from './edits/holes-touched-by.ts';
export { parseNamedEdit } from './edits/parse-named-edit.ts';
export type { NewLoop, RoutingEdit } from './edits/routing-edit.ts';
export type { FieldsOf, OutlineOf, SiteEdit } from './edits/site-edit.ts';
export type { OpenPlanOptions } from './plan-document.ts';
export { openPlan } from './plan-document.ts';
