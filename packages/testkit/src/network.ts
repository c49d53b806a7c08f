/** The server's end of a simulated connection, as a room wants it. */
export interface ServerEnd {
  send(bytes: Uint8Array): void;
  buffered(): number;
  ping(): void;
  close(reason: { readonly code: number; readonly words: string }): void;
  drop(): void;
}

/** What a room does with a connection. */
export interface ServerMember {
  receive(bytes: Uint8Array): void;
  gone(): void;
}

export interface NetworkParts {
  /** Numbers in [0, 1), seeded. */
  readonly random: () => number;
  /** Lets somebody into the room; `undefined` when the server would not answer at all. */
  readonly accept: (membership: string, end: ServerEnd) => ServerMember | undefined;
}

/** One connection, so that the simulation can cut it. */
export interface Link {
  readonly membership: string;
  /** Both ends are gone at once, and with them everything on its way. */
  cut(): void;
}

export interface Network {
  /** The `WebSocket` of a page whose addresses end in `board/membership/plan`. */
  readonly socket: typeof WebSocket;
  /** A machine without a network: its connections are cut, and new ones fail. */
  setDown(membership: string, isDown: boolean): void;
  links(): readonly Link[];
}

/** Longest time of one frame on its way, in milliseconds. */
const LONGEST_DELAY = 150;
/** How often a broadcast arrives twice. */
const REPEATED = 0.05;

/**
 * A lossy network between pages and one room: every frame takes its own time, frames of one connection stay in order as
 * on a real socket, those of different connections overtake each other; broadcasts come twice now and then; a cut loses
 * what is on its way. Timers are the global ones: the test moves them.
 */
export function openNetwork({ random, accept }: NetworkParts): Network {
  const links = new Set<Link>();
  const down = new Set<string>();

  /** Delivers in order, each thing a little later than the one before. */
  const openLane = () => {
    let busyUntil = 0;
    return (work: () => void) => {
      const at = Math.max(busyUntil, Date.now() + random() * LONGEST_DELAY);
      busyUntil = at;
      setTimeout(work, at - Date.now());
    };
  };

  class SimulatedSocket {
    readonly CONNECTING = 0;
    readonly OPEN = 1;
    readonly CLOSING = 2;
    readonly CLOSED = 3;
    readyState = 0;
    binaryType = 'arraybuffer';
    onopen: (() => void) | null = null;
    onmessage: ((event: { data: ArrayBuffer }) => void) | null = null;
    onclose: ((event: { code: number; reason: string }) => void) | null = null;
    onerror: ((event: unknown) => void) | null = null;
    readonly #toServer = openLane();
    readonly #toPage = openLane();
    readonly #membership: string;
    #member: ServerMember | undefined;
    #link: Link | undefined;

    constructor(url: string) {
      this.#membership = url.split('/').at(-2) ?? '';
      this.#toServer(() => this.#open());
    }

    send(bytes: Uint8Array): void {
      const copy = Uint8Array.from(bytes);
      this.#toServer(() => this.#member?.receive(copy));
    }

    close(): void {
      if (this.readyState >= this.CLOSING) return;
      this.readyState = this.CLOSING;
      this.#toServer(() => this.#end(1000));
    }

    #open(): void {
      if (this.readyState !== this.CONNECTING || down.has(this.#membership)) {
        this.#end(1006);
        return;
      }
      this.readyState = this.OPEN;
      this.#link = { membership: this.#membership, cut: () => this.#end(1006) };
      links.add(this.#link);
      this.onopen?.();
      this.#member = accept(this.#membership, this.#serverEnd());
      if (this.#member === undefined) this.#end(1006);
    }

    #serverEnd(): ServerEnd {
      return {
        send: (bytes) => {
          const copy = Uint8Array.from(bytes);
          const isBroadcast = copy[0] === 0 && copy[1] === 2;
          const times = isBroadcast && random() < REPEATED ? 2 : 1;
          for (let i = 0; i < times; i++) this.#toPage(() => this.#deliver(copy));
        },
        buffered: () => 0,
        ping: () => undefined,
        close: ({ code }) => this.#toPage(() => this.#end(code)),
        drop: () => this.#end(1006),
      };
    }

    #deliver(bytes: Uint8Array): void {
      if (this.readyState === this.OPEN) this.onmessage?.({ data: Uint8Array.from(bytes).buffer });
    }

    #end(code: number): void {
      if (this.readyState === this.CLOSED) return;
      this.readyState = this.CLOSED;
      if (this.#link) links.delete(this.#link);
      const member = this.#member;
      this.#member = undefined;
      member?.gone();
      this.onclose?.({ code, reason: '' });
    }
  }

  return {
    // A double of the browser's class: it has what the page's connection uses, and no more.
    socket: SimulatedSocket as unknown as typeof WebSocket,
    setDown(membership, isDown) {
      if (!isDown) {
        down.delete(membership);
        return;
      }
      down.add(membership);
      for (const link of [...links]) if (link.membership === membership) link.cut();
    },
    links: () => [...links],
  };
}
