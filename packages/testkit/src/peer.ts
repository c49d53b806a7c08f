import { type Connection, openPlan, type PlanDocument } from '@loopwright/document';
import { connect } from '@loopwright/document/client';
import type { Authorship } from './authorship.ts';
import type { Network } from './network.ts';
import { randomEdit } from './random-edit.ts';
import { pick } from './random-pick.ts';

/** One open page: the real plan and the real connection, over the simulated network. */
export interface Peer {
  readonly name: string;
  readonly membership: string;
  readonly plan: PlanDocument;
  readonly connection: Connection;
  /** Does something a person might do. What it finds wrong on the spot. */
  act(): readonly string[];
  /** The code of the permanent close, and what the page offers as a draft. */
  closed(): { readonly code: number; readonly draft: Uint8Array | undefined } | undefined;
}

export interface PeerParts {
  readonly name: string;
  /** Two tabs of one person share it. */
  readonly membership: string;
  readonly client: number;
  readonly network: Network;
  readonly random: () => number;
  readonly authorship: Authorship;
}

export function openPeer({ name, membership, client, network, random, authorship }: PeerParts): Peer {
  const plan = openPlan(undefined, { client });
  const connection = connect(plan, {
    url: 'ws://simulated/sync',
    board: 'board',
    membership,
    epoch: 1,
    keepOffline: false,
    socket: network.socket,
    random,
  });
  let closed: { readonly code: number; readonly draft: Uint8Array | undefined } | undefined;
  connection.onClosed((code, draft) => {
    closed = { code, draft };
  });

  const step = (take: () => unknown): readonly string[] => {
    const before = plan.read();
    take();
    return authorship.takenBack(name, before, plan.read()).map((hole) => `${name} took back the green of ${hole}`);
  };
  const edit = (): readonly string[] => {
    const before = plan.read();
    const chosen = randomEdit(before, random);
    if (!chosen) return [];
    connection.presence.say({ selection: [], drag: chosen });
    plan.readWith([...connection.presence.others().flatMap(({ drag }) => drag ?? []), chosen]);
    plan.edit(chosen);
    connection.presence.say({ selection: [] });
    authorship.wrote(name, before, plan.read());
    return [];
  };
  return {
    name,
    membership,
    plan,
    connection,
    act() {
      const chance = random();
      if (chance < 0.18) return step(plan.undo);
      if (chance < 0.26) return step(plan.redo);
      if (chance < 0.29) return step(() => plan.putBack(pick(plan.done(), random)?.number ?? 0));
      return edit();
    },
    closed: () => closed,
  };
}
