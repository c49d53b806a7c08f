import { type Connection, openPlan, type PlanDocument, type SavedState } from '@loopwright/document';
import { connect } from '@loopwright/document/client';
import type { HoleId, RoutingId } from '@loopwright/model';
import { type EnterAnswer, parseEnterAnswer } from '@loopwright/protocol';
import WebSocket from 'ws';

/** Somebody let in on a board. */
export interface Entry {
  readonly address: string;
  readonly cookie: string;
  readonly entered: EnterAnswer;
}

/** Exchanges a link for a cookie, as the page does. */
export async function enter(
  { address, board, secret }: { readonly address: string; readonly board: string; readonly secret: string },
  name: string,
  cookie = '',
): Promise<Entry> {
  const answer = await fetch(`http://${address}/api/boards/${board}/enter`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', cookie },
    body: JSON.stringify({ secret, name }),
  });
  const entered = parseEnterAnswer(await answer.json());
  if (!entered) throw new Error(`not let in: ${answer.status}`);
  return { address, cookie: answer.headers.get('set-cookie')?.split(';')[0] ?? cookie, entered };
}

/** One open page: a real connection over loopback, without a screen. */
export interface Page {
  readonly plan: PlanDocument;
  readonly connection: Connection;
  readonly cookie: string;
  readonly membership: string;
  /** Kept as soon as the head would say so. */
  until(kind: SavedState['kind']): Promise<void>;
  /** Cuts its network without a word, as a lost signal does. */
  cut(): void;
  close(): void;
}

export function openPage({ address, cookie, entered }: Entry): Page {
  const sockets = new Set<WebSocket>();
  class CookieSocket extends WebSocket {
    constructor(url: string, protocols?: string[]) {
      super(url, protocols, { headers: { cookie } });
      sockets.add(this);
      this.once('close', () => sockets.delete(this));
    }
  }
  const plan = openPlan();
  const { board, membership, epoch } = entered;
  const connection = connect(plan, {
    url: `ws://${address}/sync`,
    board,
    membership,
    epoch,
    keepOffline: false,
    // Node's socket and the browser's differ in types that a connection never uses.
    socket: CookieSocket as unknown as typeof globalThis.WebSocket,
  });
  return {
    plan,
    connection,
    cookie,
    membership,
    until: (kind) => untilSaved(connection, kind),
    cut() {
      for (const socket of sockets) socket.terminate();
    },
    close() {
      connection.close();
      plan.close();
    },
  };
}

function untilSaved(connection: Connection, kind: SavedState['kind']): Promise<void> {
  return new Promise((resolve) => {
    if (connection.saved().kind === kind) return resolve();
    const stop = connection.onSaved(() => {
      if (connection.saved().kind !== kind) return;
      stop();
      resolve();
    });
  });
}

/** Kept as soon as what a page shows is so; asked again after each change of plan or presence. */
export function untilShown({ plan, connection }: Page, isSo: () => boolean): Promise<void> {
  return new Promise((resolve) => {
    if (isSo()) return resolve();
    const look = () => {
      if (!isSo()) return;
      stopPlan();
      stopPresence();
      resolve();
    };
    const stopPlan = plan.onChange(look);
    const stopPresence = connection.presence.onChange(look);
  });
}

/** A hole of the first routing, by its place in id order. */
export function someHole(plan: PlanDocument, place: number): { readonly routing: RoutingId; readonly hole: HoleId } {
  const routing = plan.read().routings[0];
  const hole = routing?.holes[place];
  if (!routing || !hole) throw new Error(`the board has no hole at place ${place}`);
  return { routing: routing.id, hole: hole.id };
}

/** The name of a hole as a page shows it. */
export function nameOf(plan: PlanDocument, place: number): string | undefined {
  return plan.read().routings[0]?.holes[place]?.name;
}
