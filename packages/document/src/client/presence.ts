import type { Awareness } from 'y-protocols/awareness';
import type { Clock, Presence } from '../contract.ts';
import { fitting } from './fitting.ts';
import { openListener } from './listener.ts';
import { openListeners } from './listeners.ts';
import { openSpeaker } from './speaker.ts';

/** Presence over the provider's awareness: what this page says, and everybody else. */
export function openPresence(awareness: Awareness, clock: Clock, isHeld: () => boolean) {
  const changed = openListeners<[]>();
  const speaker = openSpeaker(clock, (state) => awareness.setLocalState({ ...fitting(state) }), isHeld);
  const listener = openListener(clock, changed.tell);
  awareness.on('update', ({ added, updated, removed }: Record<'added' | 'updated' | 'removed', number[]>) => {
    for (const client of [...added, ...updated]) {
      if (client !== awareness.clientID) listener.hear(client, awareness.getStates().get(client));
    }
    for (const client of removed) listener.left(client);
  });
  const presence: Presence = {
    client: awareness.clientID,
    say: speaker.say,
    others: listener.others,
    onChange: changed.add,
  };
  return {
    presence,
    release: speaker.release,
    close() {
      speaker.close();
      listener.close();
    },
  };
}
