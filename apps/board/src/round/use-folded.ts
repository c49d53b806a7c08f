import type { LoopId } from '@loopwright/model';
import { useMemo, useState } from 'react';
import { readKept, writeKept } from '../live/kept.ts';
import { foldedWords, readFolded, turnFolded } from './folded-loops.ts';
import type { Held } from './use-bead-hand.ts';

/** Which loops are folded, kept on this machine. One that a bead is carried into by keys opens, so that it is seen. */
export function useFolded(held: Held | undefined) {
  const [kept, setKept] = useState(() => readFolded(readKept('folded loops')));
  const into = held?.by === 'keys' && held.place.in === 'loop' ? held.place.loop : undefined;
  const folded = useMemo(() => new Set([...kept].filter((loop) => loop !== into)), [kept, into]);
  const onToggle = (loop: LoopId) => {
    const next = turnFolded(kept, loop);
    setKept(next);
    writeKept('folded loops', foldedWords(next));
  };
  return { folded, onToggle };
}
