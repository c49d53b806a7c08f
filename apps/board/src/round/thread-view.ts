import type { Analysis, Severity, WalkFigures } from '@loopwright/analysis';
import type { HoleId, LoopId } from '@loopwright/model';
import type { Change, Reading } from '../board/parts.ts';
import { lengthChange, lengthFigure } from '../reading/lengths.ts';
import type { Names } from '../reading/names.ts';
import { walkBetween } from './worst-findings.ts';

/** The walk written on the thread between two beads. */
export interface ThreadView {
  readonly key: string;
  readonly figure: string;
  /** '+38' while a change is shown, else empty. */
  readonly change: string;
  readonly worst: Severity | undefined;
  readonly said: string;
}

interface ThreadSource {
  readonly analysis: Analysis;
  readonly reading: Reading;
  /** By `walkBetween`. */
  readonly worstWalks: ReadonlyMap<string, Severity>;
  readonly change: Change | undefined;
}

/** The walks of one loop by the hole they leave; the one from the base under 'first'. */
export function threadsOf(
  loop: LoopId,
  { analysis, reading, worstWalks, change }: ThreadSource,
  names: Names,
): ReadonlyMap<HoleId | 'first', ThreadView> {
  const before = new Map(change?.before.walks.map((walk) => [walk.key, walk.distance]));
  const threads = new Map<HoleId | 'first', ThreadView>();
  for (const walk of analysis.walks) {
    if (walk.loop !== loop) continue;
    threads.set('hole' in walk.from ? walk.from.hole : 'first', {
      key: walk.key,
      figure: lengthFigure(walk.distance, reading.units),
      change: lengthChange(before.get(walk.key) ?? walk.distance, walk.distance, reading.units),
      worst:
        'hole' in walk.from && 'hole' in walk.to
          ? worstWalks.get(walkBetween(walk.from.hole, walk.to.hole))
          : undefined,
      said: `Walk from ${endsOf(walk, names).join(' to ')}: ${names.length(walk.distance)}`,
    });
  }
  return threads;
}

/** 'green 6' and 'tee 7', or the bases. */
export function endsOf({ from, to }: Pick<WalkFigures, 'from' | 'to'>, names: Names): readonly [string, string] {
  return [
    'hole' in from ? `green ${names.number(from.hole)}` : names.base(from.base),
    'hole' in to ? `tee ${names.number(to.hole)}` : names.base(to.base),
  ];
}
