import { isHoleEdit, isRoutingEdit, isSiteEdit, type NamedEdit } from '@loopwright/document';
import { type LengthUnit, SETTINGS } from '@loopwright/model';
import type { Change, Consequences } from '../../board/parts.ts';
import { namesOf } from '../../reading/names.ts';
import { settingWords } from '../../reading/setting-words.ts';
import { shortName } from '../../reading/short-name.ts';
import { stepWords } from '../../reading/step-words.ts';
import { holeTitle } from './change-title/hole.ts';
import { routingTitle } from './change-title/routing.ts';
import { siteTitle } from './change-title/site.ts';
import type { TitleSource } from './change-title/title-source.ts';

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
  if (isHoleEdit(edit)) return holeTitle(edit, source);
  if (isRoutingEdit(edit)) return routingTitle(edit, source);
  if (isSiteEdit(edit)) return siteTitle(edit, source);
  switch (edit.edit) {
    case 'change setting':
      return `‘${SETTINGS[edit.setting].label}’ set to ${settingWords(edit.setting, edit.value, source.units)}`;
    case 'decide':
      return 'a finding was decided';
    case 'reopen':
      return 'a finding was opened again';
    case 'lay out plan':
      return 'the plan was laid out';
    case 'several':
      return shortName(edit.does);
    case 'put back what was tried':
      return `what was tried is put back: ${edit.steps} ${edit.steps === 1 ? 'step' : 'steps'}`;
  }
}
