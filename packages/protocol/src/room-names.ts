/** The two shared documents of a board: designers write the plan; the server alone writes the record. */
export type RoomKind = 'plan' | 'record';

export interface RoomName {
  readonly board: string;
  readonly membership: string;
  readonly room: RoomKind;
}

const NAME = /^[A-Za-z0-9_-]{1,64}$/;

/** Whether a word can stand in a room's address. */
export function isRoomWord(word: string): boolean {
  return NAME.test(word);
}

/** The part of the address after `/sync/`: `board/membership/plan`. */
export function roomPath(name: RoomName): string {
  return `${name.board}/${name.membership}/${name.room}`;
}

/** An untrusted path as a room's name; `undefined` when it names none. Accepts it with or without `/sync/` in front. */
export function parseRoomPath(path: string): RoomName | undefined {
  const parts = path.replace(/^\/?(sync\/)?/, '').split('/');
  const [board, membership, room] = parts;
  if (parts.length !== 3 || board === undefined || membership === undefined) return undefined;
  if (!isRoomWord(board) || !isRoomWord(membership)) return undefined;
  return room === 'plan' || room === 'record' ? { board, membership, room } : undefined;
}

/** Name of the copy kept on a machine: by membership and epoch, so that two links or two rights never mix. */
export function offlineName(name: RoomName, epoch: number): string {
  return `loopwright/${roomPath(name)}/${epoch}`;
}
