import { useEffect, useMemo, useRef, useState } from 'react';
import type { Me, Reading } from '../board/parts.ts';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import type { BoardSession } from '../live/board-session.ts';
import { openSlot } from '../live/slot.ts';
import { useWatched } from '../live/use-watched.ts';
import type { DrawingTable } from './drawing-table.ts';
import type { InstrumentName } from './instrument-name.ts';

interface TableParts {
  readonly session: BoardSession;
  readonly viewpoint: Viewpoint;
  readonly reading: Reading;
  readonly me: Me;
}

const NOTHING_HELD = openSlot(undefined);

export interface TableInUse {
  /** `undefined` until the instruments have been loaded, which is after the board is shown. */
  readonly table: DrawingTable | undefined;
  /** Whether an instrument is in the hand. */
  readonly isHolding: boolean;
  /** Takes an instrument, as soon as it is there. */
  readonly take: (name: InstrumentName) => void;
}

/** The instruments of the board: fetched apart, once the board is shown. */
export function useDrawingTable({ session, viewpoint, reading, me }: TableParts): TableInUse {
  const [table, setTable] = useState<DrawingTable>();
  const [read] = useState(() => openSlot(reading));
  useEffect(() => read.set(reading), [read, reading]);
  const wanted = useRef<InstrumentName>(undefined);
  useEffect(() => {
    let here = true;
    let opened: DrawingTable | undefined;
    void import('./drawing-table.ts').then(({ openDrawingTable }) => {
      if (!here) return;
      opened = openDrawingTable({ session, viewpoint, reading: read, me });
      setTable(opened);
      if (wanted.current !== undefined) opened.hand.take(wanted.current);
    });
    return () => {
      here = false;
      opened?.stop();
      setTable(undefined);
    };
  }, [session, viewpoint, read, me]);
  const take = useMemo(
    () => (name: InstrumentName) => {
      wanted.current = name;
      table?.hand.take(name);
    },
    [table],
  );
  const isHolding = useWatched(table?.hand.held ?? NOTHING_HELD) !== undefined;
  return { table, take, isHolding };
}
