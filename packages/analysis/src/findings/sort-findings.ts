import type { HoleId } from '@loopwright/model';
import type { Finding } from '../figures.ts';
import { SEVERITY_RANK } from './one-alarm.ts';

/** Findings as every list shows them: most severe first, then in playing order, then by key. */
export function sortFindings(findings: readonly Finding[], order: readonly HoleId[]): readonly Finding[] {
  const places = new Map(order.map((hole, place) => [hole, place]));
  const placed = findings.map((finding) => ({ finding, place: firstPlace(finding, places) }));
  placed.sort(
    (a, b) =>
      SEVERITY_RANK[a.finding.severity] - SEVERITY_RANK[b.finding.severity] ||
      a.place - b.place ||
      (a.finding.key < b.finding.key ? -1 : a.finding.key > b.finding.key ? 1 : 0),
  );
  return placed.map(({ finding }) => finding);
}

/** Findings of the whole round come after those of single holes. */
function firstPlace({ holes }: Finding, places: ReadonlyMap<HoleId, number>): number {
  let first = places.size;
  for (const hole of holes) first = Math.min(first, places.get(hole) ?? places.size);
  return first;
}
