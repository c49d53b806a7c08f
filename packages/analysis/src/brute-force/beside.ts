import type { SitePoint } from '@loopwright/model';
import type { Laid } from './laid.ts';
import { apart, nearest, type Sample } from './lines.ts';

/** Half-widths of the corridor, 75, 150 and 100 ft in whole metres, and what counts as alongside. */
const WIDTHS = { tee: 23, landing: 46, green: 30 };
const OFF_TEE = 60;
const ANGLE = 25;
const WIDEST = 150;

/** For tests: by how much a place lies inside a hole's corridor, below 0 outside; undefined before the tee or past the green. */
export function insideCorridor(hole: Laid, place: SitePoint): number | undefined {
  const { distance, along } = nearest(place, hole.samples);
  if (along <= 0 || along >= hole.length - 0.001) return undefined;
  const stations = [
    [0, WIDTHS.tee],
    ...hole.landings.map((at) => [nearest(at, hole.samples).along, WIDTHS.landing] as const),
    [hole.length, WIDTHS.green],
  ] as const;
  const after = stations.findIndex(([at]) => at >= along);
  const [to, wide] = stations[after] ?? [hole.length, WIDTHS.green];
  const [from, narrow] = stations[after - 1] ?? [0, WIDTHS.tee];
  const share = to === from ? 1 : (along - from) / (to - from);
  return narrow + (wide - narrow) * share - distance;
}

/** For tests: how one line runs beside another, from samples of both. */
export interface Beside {
  readonly spacing: number;
  readonly stretch: number;
  readonly opposed: boolean;
}

/** For tests: every other metre of the first line, looked across at right angles to the second. */
export function runsBeside(first: Laid, second: Laid): Beside {
  const distances: number[] = [];
  let opposed = 0;
  for (const from of first.samples.filter(({ along }, place) => along >= OFF_TEE && place % 8 === 0)) {
    const across = lookAcross(from, second);
    if (!across) continue;
    distances.push(across.distance);
    opposed += across.opposed ? 1 : -1;
  }
  distances.sort((a, b) => a - b);
  const spacing = distances[distances.length >> 1] ?? Number.POSITIVE_INFINITY;
  return { spacing, stretch: distances.length * 2, opposed: opposed > 0 };
}

function lookAcross(from: Sample, second: Laid): { readonly distance: number; readonly opposed: boolean } | undefined {
  let best: { distance: number; opposed: boolean } | undefined;
  for (const to of second.samples) {
    if (to.along < OFF_TEE) continue;
    const ahead = (from.at.x - to.at.x) * to.towards.x + (from.at.y - to.at.y) * to.towards.y;
    if (Math.abs(ahead) > 0.13) continue;
    const turn = Math.acos(Math.min(1, Math.max(-1, from.towards.x * to.towards.x + from.towards.y * to.towards.y)));
    const degrees = (turn * 180) / Math.PI;
    if (degrees > ANGLE && degrees < 180 - ANGLE) continue;
    const distance = apart(from.at, to.at);
    if (distance > WIDEST || (best && distance >= best.distance)) continue;
    best = { distance, opposed: degrees > 90 };
  }
  return best;
}
