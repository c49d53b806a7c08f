import type { Analysis, TotalLengths } from '@loopwright/analysis';
import type { LengthUnit, LoopId, RoundId, Routing } from '@loopwright/model';
import { cardTotal, signedFigure } from '../../reading/lengths.ts';

/** A line that compares: column by column, '−226'. */
export interface CardDifference {
  readonly key: string;
  readonly name: string;
  readonly lengths: readonly { readonly teeSet: string; readonly figure: string }[];
}

/**
 * What the totals of a round differ by, as the card prints them: each tee set from the one before it; and where the
 * round is two loops, the first loop from the second.
 */
export function differencesOf(
  routing: Routing,
  analysis: Analysis,
  units: LengthUnit,
  of: RoundId | undefined,
): readonly CardDifference[] {
  const round = routing.rounds.find(({ id }) => id === of);
  const lengths = analysis.rounds.find((figures) => figures.round === of)?.lengths ?? [];
  if (!round) return [];
  const loops = new Map(analysis.loops.map((loop) => [loop.loop, loop.lengths]));
  const named = routing.rounds.length > 1 ? `, ${round.name}` : '';
  const steps = { key: 'steps', name: `from the set before${named}`, lengths: stepsOf(lengths, units) };
  return [...(lengths.length > 1 ? [steps] : []), ...betweenLoops(routing, round.loops, loops, units)];
}

function stepsOf(lengths: readonly TotalLengths[], units: LengthUnit): CardDifference['lengths'] {
  const totals = lengths.map(({ holeLengths }) => cardTotal(holeLengths, units));
  return lengths.map(({ teeSet }, place) => {
    const [before, here] = [totals[place - 1], totals[place] ?? 0];
    return { teeSet, figure: before === undefined ? '' : signedFigure(before, here) || '0' };
  });
}

function betweenLoops(
  routing: Routing,
  played: readonly LoopId[],
  lengths: ReadonlyMap<LoopId, readonly TotalLengths[]>,
  units: LengthUnit,
): readonly CardDifference[] {
  const [first, second] = played;
  if (first === undefined || second === undefined || played.length !== 2 || first === second) return [];
  const name = (loop: LoopId) => routing.loops.find(({ id }) => id === loop)?.name ?? '';
  const columns = (lengths.get(first) ?? []).map(({ teeSet, holeLengths }) => {
    const other = lengths.get(second)?.find((each) => each.teeSet === teeSet);
    const [here, there] = [holeLengths, other?.holeLengths ?? []].map((each) => cardTotal(each, units));
    return { teeSet, figure: signedFigure(there ?? 0, here ?? 0) || '0' };
  });
  return [{ key: `${first} ${second}`, name: `${name(first)} less ${name(second)}`, lengths: columns }];
}
