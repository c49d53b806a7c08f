import { useLayoutEffect, useMemo, useRef } from 'react';
import type { BoardSession } from '../live/board-session.ts';
import { type HoleHands, openHoleHands } from './hole-hands.ts';
import type { HoleAct } from './menu-entry.ts';

type Take = (instrument: Extract<HoleAct, { readonly do: 'take' }>['instrument']) => void;

/** The hands of the hole menu, for as long as the board is shown. */
export function useHoleHands(session: BoardSession, take: Take): HoleHands {
  const newest = useRef(take);
  useLayoutEffect(() => {
    newest.current = take;
  });
  return useMemo(() => openHoleHands({ session, take: (name) => newest.current(name) }), [session]);
}
