import type { NamedEdit } from '@loopwright/document';
import { pointToMillimetre, type SitePoint } from '@loopwright/model';
import { lengthWords } from '../reading/lengths.ts';
import { figuresOf, partsOf, refusalOf } from './draw-hole/drawn-hole.ts';
import { seatFor } from './draw-hole/seat-for.ts';
import type { Bench } from './instrument.ts';

/** What came of leaving a hole where an instrument lies. */
export type Left = { readonly kind: 'left' } | { readonly kind: 'refused'; readonly why: string };

/**
 * Makes a hole of a line, in the order of play: tee, turns, green. It takes the next place in the round, and is picked
 * out. One step.
 */
export function leaveHole(bench: Bench, line: readonly SitePoint[]): Left {
  const length = (metres: number) => lengthWords(metres, bench.reading().units);
  if (bench.routing().locked) return { kind: 'refused', why: 'This routing is locked: copy it to draw on it.' };
  const teeSet = bench.plan().teeSets[0];
  if (!teeSet || line.length < 2) return { kind: 'refused', why: 'A hole needs a tee and a green.' };
  for (const [index, at] of line.entries()) {
    const why = refusalOf({ points: line.slice(0, index) }, at, length);
    if (why) return { kind: 'refused', why };
  }
  const edit = holeAlong(bench, line, teeSet.id);
  bench.show(edit);
  const result = bench.write();
  if (result !== 'done') return { kind: 'refused', why: REFUSED[result] };
  bench.select({ hole: edit.hole });
  const { number } = seatFor(bench.routing(), { kind: 'next' }, edit.hole);
  const { length: metres, par } = figuresOf(line, teeSet);
  bench.say(`Left: ${number === undefined ? 'a spare hole' : `hole ${number}`}, ${length(metres)}, par ${par}.`);
  return { kind: 'left' };
}

const REFUSED = {
  gone: 'Its place in the round was removed: try once more.',
  nothing: 'The plan took no further hole: a routing holds two hundred, removed ones counted. Nothing is lost.',
} as const;

function holeAlong(bench: Bench, line: readonly SitePoint[], teeSet: string) {
  const hole = bench.freshId('h');
  const turns = line.slice(1, -1).map(() => bench.freshId('t'));
  const parts = partsOf({ hole, first: 'tee', points: line.slice(0, -1), turns }, line.at(-1));
  const { tee, green, turnPoints } = parts;
  return {
    edit: 'draw hole',
    routing: bench.routing().id,
    hole,
    seat: seatFor(bench.routing(), { kind: 'next' }, hole).seat,
    tees: tee ? { [teeSet]: pointToMillimetre(tee) } : {},
    turnPoints: turnPoints.map(({ id, at }) => ({ id, at: pointToMillimetre(at) })),
    ...(green ? { green: { ...green, centre: pointToMillimetre(green.centre) } } : {}),
  } as const satisfies NamedEdit;
}
