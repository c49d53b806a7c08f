import { holeOf, type Plan } from '@loopwright/model';
import { holesWords } from '../reading/holes-words.ts';
import { holeWords, namesOf, partWords } from '../reading/names.ts';
import { teeOf } from '../reading/tee-in-use.ts';
import { thingWords } from '../reading/thing-words.ts';
import { chosenHoles } from '../tools/chosen-holes.ts';
import { outlineNow } from '../tools/land/outlines-of.ts';
import type { Consequences, Reading, Selection } from './parts.ts';

/** What is picked out, for those who listen: 'hole 6, par 4, 327 yd. Green 6 chosen', 'holes 3, 4 and 7 chosen'. */
export function spokenSelection(
  { plan, routing, analysis }: Consequences,
  selection: Selection,
  reading: Reading,
): string {
  const { hole, part, thing } = selection;
  if (thing) return spokenThing(plan, selection);
  if (hole === undefined || !holeOf(routing, hole)) return '';
  const names = namesOf(plan, routing, reading.units);
  const chosen = chosenHoles(routing, selection);
  if (chosen.length > 1) return `${holesWords({ routing, names }, chosen)} chosen`;
  const figures = analysis.holes.get(hole);
  const tee = teeOf(figures, reading.teeSet);
  const words = [holeWords(routing, names, hole)];
  if (figures?.missing) words.push(`no ${figures.missing} yet`);
  else if (figures) words.push(`par ${figures.par.men}`);
  if (tee) words.push(names.length(tee.measuredLength));
  const picked = part === undefined ? '' : `. ${partWords(plan.teeSets, names.number(hole), part)} chosen`;
  return words.join(', ') + picked;
}

/** 'Mill pond chosen, vertex 3 of 12 at 120.5 east, 40.0 north'. */
function spokenThing({ site }: Plan, { thing, vertex }: Selection): string {
  if (!thing) return '';
  const words = `${thingWords(site, thing)} chosen`;
  const points = vertex && outlineNow(site, vertex.outline)?.points;
  const place = points?.findIndex(({ x, y }) => x === vertex?.at.x && y === vertex.at.y) ?? -1;
  if (!points || !vertex || place < 0) return words;
  const { x, y } = vertex.at;
  return `${words}, vertex ${place + 1} of ${points.length} at ${x.toFixed(1)} east, ${y.toFixed(1)} north`;
}
