import { type Hole, type HoleId, holeOf } from '@loopwright/model';
import type { Consequences, Reading } from '../../board/parts.ts';
import { cardTotal, grouped, unitSymbol } from '../../reading/lengths.ts';
import { teeOf } from '../../reading/tee-in-use.ts';

/** What several holes have in common, for the sheet. */
export interface SeveralView {
  /** 'par 12, 1,204 yd together'. */
  readonly together: string;
  /** 'keeper', or how many of each: '2 keeper, 1 weak'. */
  readonly verdicts: string;
  /** How many have parts that are pinned. */
  readonly pinned: number;
}

export function toSeveral(
  { routing, analysis }: Consequences,
  reading: Reading,
  chosen: readonly HoleId[],
): SeveralView {
  const holes = chosen.flatMap((id) => holeOf(routing, id) ?? []);
  const figures = chosen.flatMap((id) => analysis.holes.get(id) ?? []).filter(({ missing }) => !missing);
  const par = figures.reduce((sum, each) => sum + each.par.men, 0);
  const lengths = figures.flatMap((each) => teeOf(each, reading.teeSet)?.measuredLength ?? []);
  const total = `${grouped(cardTotal(lengths, reading.units))} ${unitSymbol(reading.units)}`;
  return {
    together: `par ${par}, ${total} together`,
    verdicts: verdictWords(holes),
    pinned: holes.filter(({ pinned }) => pinned.length > 0).length,
  };
}

function verdictWords(holes: readonly Hole[]): string {
  const counts = new Map<string, number>();
  for (const { verdict } of holes) counts.set(verdict, (counts.get(verdict) ?? 0) + 1);
  const [only] = counts.keys();
  if (counts.size === 1 && only !== undefined) return only;
  return [...counts].map(([verdict, count]) => `${count} ${verdict}`).join(', ');
}
