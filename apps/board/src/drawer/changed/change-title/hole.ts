import type { HoleEdit } from '@loopwright/document';
import type { HoleId, PartId, SitePoint } from '@loopwright/model';
import { lengthWords } from '../../../reading/lengths.ts';
import { holeCalled, holeWords, partWords } from '../../../reading/names.ts';
import { quoted, shortName } from '../../../reading/short-name.ts';
import type { PartEdit } from '../../../reading/step-words/hole.ts';
import { byWords, placeOfPart, type TitleSource } from './title-source.ts';

/** What was done to a hole, in one line. It goes by the number it had; where it has none yet, by the one it has now. */
export function holeTitle(edit: HoleEdit, source: TitleSource): string {
  if (edit.edit === 'move holes') {
    const count = edit.holes.length === 1 ? 'one hole' : `${edit.holes.length} holes`;
    return `${count} moved ${byWords(edit.by, source.units)}`;
  }
  const { at, before, now } = source;
  const [was, is] = [holeCalled(before.number(edit.hole)), holeCalled(now.number(edit.hole))];
  const number = (id: HoleId) => shortName(before.number(id));
  switch (edit.edit) {
    case 'draw hole':
      return `${is} drawn`;
    case 'copy hole':
      return `${was} copied into the tray`;
    case 'remove hole':
      return `${was} removed`;
    case 'move hole':
      return `${was} moved ${byWords(edit.by, source.units)}`;
    case 'reverse hole':
      return `${was} now plays the other way`;
    case 'exchange corridors':
      return `${number(edit.hole)} and ${number(edit.with)} exchanged corridors`;
    case 'move in the round':
      return was === is ? `${was} moved in the round` : `${was} is now ${is}`;
    case 'take out':
      return `${was} taken out of the round`;
    case 'bring back':
      return `${was} brought back as ${holeWords(at.routing, now, edit.hole)}`;
    case 'swap places':
      return `holes ${number(edit.hole)} and ${number(edit.with)} swapped places`;
    case 'set par':
      return `par of ${is} for ${edit.sex}: ${edit.par}`;
    case 'judge':
      return `${is} judged ${edit.verdict}`;
    case 'relate':
    case 'unrelate':
      return `relations of ${is} changed`;
    case 'name hole':
      return edit.name.trim() === '' ? `${was} has no name now` : `${was} named ${quoted(edit.name.trim())}`;
    case 'note hole':
      return edit.note.trim() === '' ? `note on ${is} removed` : `note on ${is}`;
    default:
      return partTitle(edit, was, source);
  }
}

function partTitle(edit: PartEdit, hole: string, source: TitleSource): string {
  const part = (id: PartId) => partWords(source.at.plan.teeSets, source.before.number(edit.hole), id);
  switch (edit.edit) {
    case 'move part':
      return movedWords(edit.hole, edit.part, edit.to, source);
    case 'pin':
    case 'unpin':
      return `${part(edit.part)} ${edit.edit}ned`;
    case 'add turn point':
      return `a turn added to ${hole}`;
    case 'remove turn point':
      return `a turn taken out of ${hole}`;
    case 'lengthen':
      return `${hole} ${edit.by < 0 ? 'shortened' : 'lengthened'} ${lengthWords(Math.abs(edit.by), source.units)}`;
    case 'shape green':
      return `${part('green')} shaped ${sizeWords(edit.shape, source)}`;
    case 'propose tee':
      return `${part(`tee:${edit.teeSet}`)} as proposed`;
    case 'set waypoints':
      return edit.waypoints.length === 0 ? `walk after ${hole} straight again` : `walk after ${hole} led another way`;
    case 'set corridor':
      return edit.corridor ? `${hole} has a corridor of its own` : `corridor of ${hole} as the board sets it`;
  }
}

function sizeWords(shape: { readonly length: number; readonly width: number }, { units }: TitleSource): string {
  return `${lengthWords(shape.length, units)} by ${lengthWords(shape.width, units)}`;
}

function movedWords(hole: HoleId, part: PartId, to: SitePoint, source: TitleSource): string {
  const what = partWords(source.at.plan.teeSets, source.before.number(hole), part);
  const from = placeOfPart(source, hole, part);
  return from ? `${what} moved ${byWords({ x: to.x - from.x, y: to.y - from.y }, source.units)}` : `${what} placed`;
}
