import type { NamedEdit } from '@loopwright/document';
import { bearingOf, distanceBetween } from '@loopwright/geometry';
import { type HoleId, holeOf, type SitePoint } from '@loopwright/model';
import type { Consequences, Reading } from '../board/parts.ts';
import { bearingWords, compassWord } from '../reading/directions.ts';
import { lengthFigure, lengthWords } from '../reading/lengths.ts';
import { teeOf } from '../reading/tee-in-use.ts';

/** The figures of what a drag is changing, as they run with the pointer: '398 yd (240 + 158), par 4'. */
export function dragFigures(edit: NamedEdit, shown: Consequences, reading: Reading): readonly string[] {
  switch (edit.edit) {
    case 'move part':
    case 'add turn point':
    case 'lengthen':
      return holeFigures(edit.hole, shown, reading);
    case 'move hole':
    case 'move holes':
      return [wayWords(edit.by, reading)];
    case 'shape green':
      return [
        `green ${lengthFigure(edit.shape.length, reading.units)} × ${lengthWords(edit.shape.width, reading.units)}, ${bearingWords(edit.shape.bearing)}`,
      ];
    case 'set waypoints':
      return walkFigures(edit.hole, shown, reading);
    default:
      return [];
  }
}

/** The length from the tee that is read with its legs, and the par. */
function holeFigures(id: HoleId, { routing, analysis }: Consequences, reading: Reading): readonly string[] {
  const [hole, figures] = [holeOf(routing, id), analysis.holes.get(id)];
  const tee = teeOf(figures, reading.teeSet);
  if (!hole || !figures || !tee || figures.missing) return [];
  const total = lengthWords(tee.measuredLength, reading.units);
  const stops = [...hole.turnPoints.map(({ at }) => at), ...(hole.green ? [hole.green.centre] : [])];
  const legs = stops.map((at, index) => lengthFigure(distanceBetween(stops[index - 1] ?? tee.at, at), reading.units));
  return [`${total}${legs.length > 1 ? ` (${legs.join(' + ')})` : ''}, par ${figures.par.men}`];
}

function walkFigures(id: HoleId, { analysis }: Consequences, reading: Reading): readonly string[] {
  const walk = analysis.walks.find(({ from }) => 'hole' in from && from.hole === id);
  return walk ? [`walk ${lengthWords(walk.distance, reading.units)}`] : [];
}

function wayWords(by: SitePoint, { units }: Reading): string {
  return `${lengthWords(distanceBetween({ x: 0, y: 0 }, by), units)} ${compassWord(bearingOf(by))}`;
}
