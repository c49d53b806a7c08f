import type { SiteMark } from '@loopwright/model';
import type { Analysis, Finding } from '../figures.ts';
import { findPartNearest } from './mark-parts.ts';

const KINDS: readonly SiteMark['kind'][] = ['green site', 'tee site', 'landing ground'];

/**
 * Whether a site mark that is unused now was taken up in an earlier state. A mark just found, or one that lay there
 * before the first hole was drawn, was not: nobody made anything worse.
 */
export function wasTakenUp(unused: Finding, before: Analysis): boolean {
  const kind = KINDS.find((each) => each === unused.detail.mark);
  if (!kind || unused.place.type !== 'point') return false;
  const mark = { kind, at: unused.place.at };
  for (const hole of before.holes.values()) {
    const nearest = findPartNearest(mark, hole);
    if (nearest && nearest.distance <= unused.limit) return true;
  }
  return false;
}
