import type { Plan } from '@loopwright/model';
import type { Consequences } from '../board/parts.ts';
import { type DayPicture, openDayPicture } from './day-picture.ts';
import { startOfDay } from './kept-starts.ts';

/** How the day began on this machine. */
export interface OpenDayStart {
  /** Milliseconds since 1970. */
  readonly at: number;
  /** What lies elsewhere now, where it lay. */
  readonly pictureOf: (now: Consequences) => DayPicture;
}

/** The start of the day of a board: kept before, or now with this plan. */
export async function openDayStart(board: string, now: Date, plan: Plan): Promise<OpenDayStart> {
  const start = await startOfDay(board, now, plan);
  return { at: start.at, pictureOf: openDayPicture(start) };
}
