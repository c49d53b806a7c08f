import { type HoleId, holeOf, type LengthUnit, type PartId, type Plan, type SitePoint } from '@loopwright/model';
import type { Change, Consequences } from '../../../board/parts.ts';
import { compassWord, headingOf } from '../../../reading/directions.ts';
import { lengthWords } from '../../../reading/lengths.ts';
import type { Names } from '../../../reading/names.ts';

/** What a title is made from: the change, what things were and are called, and what there is now. */
export interface TitleSource {
  readonly change: Change;
  readonly before: Names;
  readonly now: Names;
  readonly at: Consequences;
  readonly units: LengthUnit;
}

/** How far and which way: '41 yd north-east'. */
export function byWords(by: SitePoint, units: LengthUnit): string {
  const distance = Math.sqrt(by.x * by.x + by.y * by.y);
  return `${lengthWords(distance, units)} ${compassWord(headingOf(by))}`;
}

/** Where a part lay before: as placed, or where a tee was proposed. */
export function placeOfPart({ change, at }: TitleSource, hole: HoleId, part: PartId): SitePoint | undefined {
  const before = partIn(change.beforePlan, at.routing.id, hole, part);
  return before ?? change.before.holes.get(hole)?.tees.find(({ teeSet }) => part === `tee:${teeSet}`)?.at;
}

function partIn(plan: Plan, routing: string, hole: HoleId, part: PartId): SitePoint | undefined {
  const found = plan.routings.find(({ id }) => id === routing);
  const parts = found && holeOf(found, hole);
  if (part === 'green') return parts?.green?.centre;
  const id = part.slice(part.indexOf(':') + 1);
  return part.startsWith('tee:') ? parts?.tees[id] : parts?.turnPoints.find((turn) => turn.id === id)?.at;
}
