import type { NamedEdit } from '@loopwright/document';
import {
  type HoleId,
  holeOf,
  type LengthUnit,
  type PartId,
  type Plan,
  SETTINGS,
  type SitePoint,
} from '@loopwright/model';
import type { Change, Consequences } from '../../board/parts.ts';
import { compassWord, headingOf } from '../../reading/directions.ts';
import { lengthWords } from '../../reading/lengths.ts';
import { holeWords, type Names, namesOf, partWords } from '../../reading/names.ts';
import { settingWords } from '../../reading/setting-words.ts';
import { stepWords } from '../../reading/step-words.ts';

interface TitleSource {
  readonly change: Change;
  readonly before: Names;
  readonly now: Names;
  readonly at: Consequences;
  readonly units: LengthUnit;
}

/** What was done, in one line: 'Green 6 moved 41 yd north-east'. Several edits are counted after the first. */
export function changeTitle(change: Change, at: Consequences, units: LengthUnit): string {
  const routingBefore = change.beforePlan.routings.find(({ id }) => id === at.routing.id) ?? at.routing;
  const before = namesOf(change.beforePlan, routingBefore, units);
  const source = { change, before, now: namesOf(at.plan, at.routing, units), at, units };
  const [first, ...more] = change.edits;
  if (!first) return 'The plan was changed';
  const words = capital(
    change.takenBack ? `${stepWords(first, source.now, at.plan.teeSets)} taken back` : editWords(first, source),
  );
  return more.length === 0 ? words : `${words}, and ${more.length} more ${more.length === 1 ? 'change' : 'changes'}`;
}

const capital = (words: string) => words.slice(0, 1).toLocaleUpperCase('en') + words.slice(1);

function editWords(edit: NamedEdit, source: TitleSource): string {
  switch (edit.edit) {
    case 'move part':
      return movedWords(edit.hole, edit.part, edit.to, source);
    case 'move hole':
      return `hole ${source.before.number(edit.hole)} moved ${byWords(edit.by, source.units)}`;
    case 'change setting':
      return `‘${SETTINGS[edit.setting].label}’ set to ${settingWords(edit.setting, edit.value, source.units)}`;
    case 'decide':
      return 'a finding was decided';
    case 'reopen':
      return 'a finding was opened again';
    case 'lay out plan':
      return 'the plan was laid out';
    case 'swap places':
      return `holes ${source.before.number(edit.hole)} and ${source.before.number(edit.with)} swapped places`;
    case 'pin':
    case 'unpin':
      return `${partWords(source.at.plan.teeSets, source.before.number(edit.hole), edit.part)} ${edit.edit}ned`;
    default:
      return 'hole' in edit ? holeEditWords(edit, source) : stepWords(edit, source.now, source.at.plan.teeSets);
  }
}

type OfHole = Extract<NamedEdit, { hole: HoleId }>;

function holeEditWords(edit: OfHole, { at, before, now }: TitleSource): string {
  const [was, is] = [before.number(edit.hole), now.number(edit.hole)];
  switch (edit.edit) {
    case 'reverse hole':
      return `hole ${was} now plays the other way`;
    case 'move in the round':
      return was === is ? `hole ${was} moved in the round` : `hole ${was} is now hole ${is}`;
    case 'take out':
      return `hole ${was} taken out of the round`;
    case 'bring back':
      return `${was} brought back as ${holeWords(at.routing, now, edit.hole)}`;
    case 'set par':
      return `par of hole ${is} for ${edit.sex}: ${edit.par}`;
    case 'judge':
      return `hole ${is} judged ${edit.verdict}`;
    case 'name hole':
      return `hole ${is} named ${edit.name}`;
    default:
      return `relations of hole ${is} changed`;
  }
}

function movedWords(hole: HoleId, part: PartId, to: SitePoint, { change, before, at, units }: TitleSource): string {
  const what = partWords(at.plan.teeSets, before.number(hole), part);
  const from = placeOfPart(change, at.routing.id, hole, part);
  return from ? `${what} moved ${byWords({ x: to.x - from.x, y: to.y - from.y }, units)}` : `${what} placed`;
}

function byWords(by: SitePoint, units: LengthUnit): string {
  const distance = Math.sqrt(by.x * by.x + by.y * by.y);
  return `${lengthWords(distance, units)} ${compassWord(headingOf(by))}`;
}

/** Where a part lay before: as placed, or where a tee was proposed. */
function placeOfPart(change: Change, routing: string, hole: HoleId, part: PartId): SitePoint | undefined {
  const before = partIn(change.beforePlan, routing, hole, part);
  return before ?? change.before.holes.get(hole)?.tees.find(({ teeSet }) => part === `tee:${teeSet}`)?.at;
}

function partIn(plan: Plan, routing: string, hole: HoleId, part: PartId): SitePoint | undefined {
  const found = plan.routings.find(({ id }) => id === routing);
  const parts = found && holeOf(found, hole);
  if (part === 'green') return parts?.green?.centre;
  const id = part.slice(part.indexOf(':') + 1);
  return part.startsWith('tee:') ? parts?.tees[id] : parts?.turnPoints.find((turn) => turn.id === id)?.at;
}
