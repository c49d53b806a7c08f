export type { CloseName, CloseReason } from './close-codes.ts';
export { CLOSE_CODES, closeWords, isPermanentClose } from './close-codes.ts';
export type { Frame, Malformed } from './frames.ts';
export { encodeFrame, MESSAGE, parseFrame } from './frames.ts';
export type {
  BlobAnswer,
  CreateBoardAnswer,
  CreateBoardRequest,
  EnterAnswer,
  EnterRequest,
  HeldAnswer,
  Role,
} from './http-api.ts';
export {
  parseBlobAnswer,
  parseCreateBoard,
  parseCreateBoardAnswer,
  parseEnter,
  parseEnterAnswer,
  saysHeld,
} from './http-api.ts';
export type { ErrorAnswer, HttpError, HttpErrorCode } from './http-errors.ts';
export { errorAnswer, HTTP_ERRORS } from './http-errors.ts';
export type { LimitName } from './limits.ts';
export { LIMITS } from './limits.ts';
export type { PresenceEntry } from './presence.ts';
export { encodePresence, parsePresence } from './presence.ts';
export type { RefusalCode } from './refusals.ts';
export { isRefusalCode, REFUSAL_CODES, REFUSALS } from './refusals.ts';
export type { RoomKind, RoomName } from './room-names.ts';
export { isRoomWord, offlineName, parseRoomPath, roomPath } from './room-names.ts';
