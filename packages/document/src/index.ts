export type {
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
