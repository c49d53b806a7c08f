import { distanceBetween, pointBetween, polylineLength } from '@loopwright/geometry';
import { LIMITS, type SitePoint } from '@loopwright/model';
import { thinnedLine } from './thinned.ts';

/** Pieces whose ends lie within this of each other meet (m). */
const MEETING = 2;

/** The pieces of one hole's line joined end to end; `gap` is the widest jump between two of them (m). */
export function joinedPieces(pieces: readonly (readonly SitePoint[])[]): {
  readonly line: readonly SitePoint[];
  readonly gap: number;
} {
  let line: readonly SitePoint[] = pieces[0] ?? [];
  let gap = 0;
  for (const piece of pieces.slice(1)) {
    const [start, end, first, last] = [line[0], line.at(-1), piece[0], piece.at(-1)];
    if (!start || !end || !first || !last) continue;
    const ways = [
      { apart: distanceBetween(end, first), joined: [...line, ...piece] },
      { apart: distanceBetween(end, last), joined: [...line, ...piece.toReversed()] },
      { apart: distanceBetween(start, last), joined: [...piece, ...line] },
      { apart: distanceBetween(start, first), joined: [...piece.toReversed(), ...line] },
    ];
    // As drawn where that is as near as any other way: the first piece is the one off the tee.
    const best = ways.reduce((near, way) => (way.apart < near.apart - MEETING ? way : near));
    line = best.joined;
    gap = Math.max(gap, best.apart);
  }
  return { line: withoutRepeats(line), gap };
}

function withoutRepeats(line: readonly SitePoint[]): readonly SitePoint[] {
  return line.filter((point, index) => {
    const before = line[index - 1];
    return before === undefined || distanceBetween(point, before) > 0.01;
  });
}

/** Points of a line that are looked at one by one; a finer drawing is thinned first, by less than its width. */
const MOST_TRACED = 200;

/** Share of its length by which a simplified line may differ before its turn points are moved. */
const LENGTH_TOLERANCE = 0.001;

export interface SimplifiedLine {
  /** Tee, at most three turn points, green. */
  readonly line: readonly SitePoint[];
  /** Turn points of the mapped line that are gone. */
  readonly dropped: number;
  /** Metres by which the line is shorter (negative) or longer than the mapped one. */
  readonly lengthChange: number;
  /** Whether the turn points stand off the mapped line, so that the length stays true. */
  readonly isSpread: boolean;
}

/**
 * A mapped line with at most the three turn points a hole can have.
 *
 * Those are kept that leave the line longest, which are the ones at its bends. Where the line is then still more than
 * 1 in 1,000 shorter, the turn points are moved away from the straight line from tee to green until the length is that
 * of the mapped line: a card's length matters more than a turn point's place.
 *
 * Cost: O(n log n) in the points of the line, and O(m²) in the 200 of them that are looked at.
 */
export function simplifiedLine(mapped: readonly SitePoint[]): SimplifiedLine {
  const most = LIMITS.turnPointsPerHole;
  if (mapped.length <= most + 2) return { line: mapped, dropped: 0, lengthChange: 0, isSpread: false };
  const length = polylineLength(mapped);
  const longest = longestChain(thinnedLine(mapped, MOST_TRACED).points, most);
  const isShort = length - polylineLength(longest) > length * LENGTH_TOLERANCE;
  const line = isShort ? spread(longest, length) : longest;
  return {
    line,
    dropped: mapped.length - line.length,
    lengthChange: polylineLength(line) - length,
    isSpread: isShort,
  };
}

interface Chain {
  readonly length: number;
  readonly through: readonly SitePoint[];
}

/** The longest line from first to last point by way of `most` of those between, in order: by dynamic programming. */
function longestChain(points: readonly SitePoint[], most: number): readonly SitePoint[] {
  const [tee, ...rest] = points;
  if (!tee) return points;
  let chains: readonly Chain[] = points.map((_, index) => ({ length: 0, through: index === 0 ? [tee] : [] }));
  for (let legs = 1; legs <= most + 1; legs++) {
    const before = chains;
    chains = points.map((point, index) => {
      let best: Chain = { length: Number.NEGATIVE_INFINITY, through: [] };
      for (let from = legs - 1; from < index; from++) {
        const chain = before[from];
        const last = points[from];
        if (!chain || !last || chain.through.length !== legs) continue;
        const length = chain.length + distanceBetween(last, point);
        if (length > best.length) best = { length, through: [...chain.through, point] };
      }
      return best;
    });
  }
  return chains[rest.length]?.through ?? points;
}

/** Moves the points between tee and green away from the straight line between those until the line has `length`. */
function spread(line: readonly SitePoint[], length: number): readonly SitePoint[] {
  const [tee, green] = [line[0], line.at(-1)];
  if (!tee || !green) return line;
  const by = (factor: number) =>
    line.map((point, index) => {
      if (index === 0 || index === line.length - 1) return point;
      return pointBetween(footOn(tee, green, point), point, factor);
    });
  let [least, most] = [1, 4];
  for (let i = 0; i < 40; i++) {
    const middle = (least + most) / 2;
    if (polylineLength(by(middle)) < length) least = middle;
    else most = middle;
  }
  return by(most);
}

function footOn(tee: SitePoint, green: SitePoint, point: SitePoint): SitePoint {
  const [dx, dy] = [green.x - tee.x, green.y - tee.y];
  const squared = dx * dx + dy * dy;
  const share = squared === 0 ? 0 : ((point.x - tee.x) * dx + (point.y - tee.y) * dy) / squared;
  return { x: tee.x + share * dx, y: tee.y + share * dy };
}
