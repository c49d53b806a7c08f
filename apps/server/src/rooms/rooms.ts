import type { CloseName } from '@loopwright/protocol';
import type { RoomKey } from '../storage/store.ts';
import { loadRoom } from './load-room.ts';
import { openLiveRoom, type Room, type RoomPorts } from './room.ts';

/** The rooms in memory: opened by the first who comes, let go some time after the last has left. */
export interface Rooms {
  open(key: RoomKey): Promise<Room>;
  /** How many rooms wait for the store to take writes again. */
  refusing(): number;
  closeLink(link: string, reason: CloseName): void;
  /** Why somebody who was admitted by a link before their room was open must not go in after all. */
  closedMeanwhile(link: string): CloseName | undefined;
  /** Closes every connection and waits for what is on its way to the store. */
  end(): Promise<void>;
}

export function openRooms(ports: Omit<RoomPorts, 'onEmpty'>): Rooms {
  const { clock, limits, metrics } = ports;
  const opening = new Map<string, Promise<Room>>();
  const rooms = new Map<string, Room>();
  const closedLinks = new Map<string, CloseName>();
  let ended = false;
  const nameOf = ({ board, room }: RoomKey) => `${board}/${room}`;
  const count = () => {
    metrics.rooms.set(rooms.size);
    metrics.storeRefusing.set(refusing());
  };
  const refusing = () => [...rooms.values()].filter((room) => room.refusing()).length;

  const letGo = async (name: string, room: Room) => {
    await room.idle();
    if (room.people() > 0 || rooms.get(name) !== room) return;
    rooms.delete(name);
    opening.delete(name);
    room.end();
    count();
  };

  const load = async (key: RoomKey): Promise<Room> => {
    const name = nameOf(key);
    const document = await loadRoom(key, ports);
    const room: Room = openLiveRoom(key, document, {
      ...ports,
      onEmpty: () => clock.after(limits.roomIdle, () => letGo(name, room)),
    });
    rooms.set(name, room);
    count();
    return room;
  };

  const stopBeat = clock.every(limits.heartbeat, () => {
    for (const room of rooms.values()) room.beat();
    count();
  });

  return {
    open(key) {
      const name = nameOf(key);
      const known = opening.get(name);
      if (known) return known;
      const room = load(key);
      opening.set(name, room);
      room.catch(() => opening.delete(name)); // the next one who comes tries again
      return room;
    },
    refusing,
    closeLink(link, reason) {
      closedLinks.set(link, reason);
      for (const room of rooms.values()) room.closeLink(link, reason);
    },
    closedMeanwhile: (link) => (ended ? 'server-stopping' : closedLinks.get(link)),
    async end() {
      ended = true;
      stopBeat();
      await Promise.allSettled(opening.values());
      for (const room of rooms.values()) room.closeAll('server-stopping');
      await Promise.all([...rooms.values()].map((room) => room.idle()));
      for (const room of rooms.values()) room.end();
      rooms.clear();
      opening.clear();
    },
  };
}
