export type { Offer, OpenRoom, Rights, RoomDocument, RoomRules } from './contract.ts';
export { createPlanState } from './create-plan-state.ts';
export { openRoom } from './room.ts';
