import { distanceBetween } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';
import type { InstrumentPicture, Snapped } from '../instrument.ts';
import { type DrawnHole, isLastPoint } from './drawn-hole.ts';
import type { SeatForNew } from './seat-for.ts';

const END = { tee: 'green', green: 'tee' } as const;

/** What to do next, in one sentence. */
export function promptFor(drawn: DrawnHole, { number }: SeatForNew, next: 'turn' | 'end'): string {
  const hole = number === undefined ? 'a spare hole' : `hole ${number}`;
  if (drawn.points.length === 0) return `Place the ${drawn.first} of ${hole}.`;
  const end = END[drawn.first];
  if (isLastPoint(drawn) || next === 'end') return `Place the ${end} of ${hole}.`;
  return `Place a turn, or press twice for the ${end}.`;
}

export interface PictureParts {
  readonly drawn: DrawnHole;
  readonly snapped: Snapped | undefined;
  /** The figures of the line: '378 yd, par 4'. */
  readonly figures: string | undefined;
  /** Why this point cannot be. */
  readonly refused: string | undefined;
  /** From the green before: '62 yd from green 6'. */
  readonly walk: string | undefined;
  readonly length: (metres: number) => string;
}

/** What is drawn over the plan while a hole is; the hole itself is on the plan already. */
export function pictureOf(parts: PictureParts): InstrumentPicture {
  const { drawn, snapped, figures, refused, walk } = parts;
  const from = drawn.points.at(-1);
  const dots = drawn.points.map((at) => ({ at, manner: 'grip' as const }));
  if (!snapped) return { dots };
  const atPointer = [refused ?? figures, walk, snapped.because].filter((words) => words !== undefined);
  return {
    dots: [...dots, { at: snapped.at, manner: 'new' }],
    lines: [
      ...(snapped.guide ? [{ points: snapped.guide, manner: 'guide' as const }] : []),
      ...(from ? [{ points: [from, snapped.at], manner: refused ? ('guide' as const) : ('new' as const) }] : []),
    ],
    words: from && drawn.points.length > 1 && !refused ? [legWords(from, snapped.at, parts.length)] : [],
    atPointer,
  };
}

const legWords = (from: SitePoint, to: SitePoint, length: (metres: number) => string) => ({
  at: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 },
  text: length(distanceBetween(from, to)),
});
