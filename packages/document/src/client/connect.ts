import { MESSAGE, offlineName } from '@loopwright/protocol';
import * as decoding from 'lib0/decoding';
import { Awareness } from 'y-protocols/awareness';
import type { Connection, ConnectOptions, PlanDocument } from '../contract.ts';
import { SharedPlan } from '../plan-document.ts';
import { OWN_EDIT } from '../shared-doc.ts';
import { openListeners } from './listeners.ts';
import { type OfflineCopy, openOfflineCopy } from './offline-copy.ts';
import { openPresence } from './presence.ts';
import { openProvider } from './provider.ts';
import { watchSaved } from './saved-watch.ts';
import { SYSTEM_CLOCK } from './system-clock.ts';
import { openTally } from './tally.ts';

/**
 * Joins a plan to its board's room, and keeps it joined.
 *
 * Works offline at once; with `keepOffline` what this machine kept is loaded before the first try to connect.
 *
 * @throws TypeError if the plan was not made by `openPlan`
 */
export function connect(plan: PlanDocument, options: ConnectOptions): Connection {
  if (!(plan instanceof SharedPlan)) throw new TypeError('connect: the plan must come from openPlan');
  const { doc } = plan;
  const tally = openTally();
  const awareness = new Awareness(doc);
  const closed = openListeners<[number, Uint8Array | undefined]>();
  let offline: OfflineCopy | undefined;
  let isRefused = false;
  let isEnded = false;

  // Counted before the provider sends it: its listener comes second.
  const count = (_update: Uint8Array, origin: unknown) => {
    if (origin === OWN_EDIT) tally.edited();
  };
  doc.on('update', count);
  const provider = openProvider(plan, options, awareness, tally);
  const saved = watchSaved(tally, () => ({
    isOpen: provider.wsconnected,
    isSynced: provider.synced,
    isKept: offline?.kept ?? false,
  }));
  doc.on('update', saved.look);
  const isOnItsWay = () => provider.wsconnected && tally.waiting() > 0;
  const talk = openPresence(awareness, options.clock ?? SYSTEM_CLOCK, isOnItsWay);

  provider.messageHandlers[MESSAGE.committed] = (_encoder, decoder) => {
    tally.committed(decoding.readVarUint(decoder));
    saved.look();
    talk.release();
  };
  provider.messageHandlers[MESSAGE.refused] = (_encoder, decoder) => {
    decoding.readVarString(decoder);
    decoding.readVarUint(decoder);
    isRefused = true;
  };
  provider.on('status', ({ status }) => {
    if (status === 'connected') tally.opened();
    saved.look();
    talk.release();
  });
  provider.on('sync', saved.look);
  provider.on('connection-close', saved.failed);
  provider.on('closed', ({ code }) => {
    const isUnsaved = isRefused || tally.waiting() > 0 || (offline?.kept === true && !saved.hasJoined());
    saved.closed(code);
    closed.tell(code, isUnsaved ? plan.state() : undefined);
  });

  const start = async () => {
    if (options.keepOffline) {
      const { board, membership, epoch } = options;
      const copy = await openOfflineCopy(offlineName({ board, membership, room: 'plan' }, epoch), doc);
      if (isEnded) return copy.close();
      offline = copy;
    }
    provider.connect();
  };
  void start();

  return {
    presence: talk.presence,
    saved: saved.state,
    onSaved: saved.onChange,
    onClosed: closed.add,
    close() {
      isEnded = true;
      talk.close();
      awareness.destroy(); // says that this page leaves
      provider.destroy();
      doc.off('update', count);
      doc.off('update', saved.look);
      offline?.close();
    },
  };
}
