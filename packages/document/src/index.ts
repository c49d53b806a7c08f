export type {
  Clock,
  Connection,
  ConnectOptions,
  EditResult,
  NamedEdit,
  Person,
  PlanDocument,
  Presence,
  PresenceState,
  SavedState,
  Stop,
  UndoResult,
  UnreadField,
} from './contract.ts';
export { parseNamedEdit } from './edits/parse-named-edit.ts';
export type { OpenPlanOptions } from './plan-document.ts';
export { openPlan } from './plan-document.ts';
