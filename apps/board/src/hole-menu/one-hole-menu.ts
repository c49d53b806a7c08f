import { distanceBetween, pointBetween } from '@loopwright/geometry';
import {
  type Hole,
  LIMITS,
  pointToMillimetre,
  type RelationKind,
  type Routing,
  type SitePoint,
} from '@loopwright/model';
import { VERDICTS } from '../drawer/points/hole-choices.ts';
import { holeWords, partWords } from '../reading/names.ts';
import { oval, shapeOf } from '../tools/green-shapes.ts';
import { partsInPlay } from '../tools/nudge.ts';
import { askToRelate, entryAsking } from './hole-questions.ts';
import type { MenuEntry, MenuPart } from './menu-entry.ts';
import type { MenuSource } from './menu-source.ts';
import { roundEntries } from './round-entries.ts';

/** How far beside the original a copy lies, in metres: far enough to be seen, near enough to be found. */
const COPY_BY: SitePoint = { x: 40, y: -40 };

/** Everything that can be done with one hole. */
export function oneHoleMenu(source: MenuSource, hole: Hole): readonly MenuPart[] {
  return [
    { title: 'Line of play', entries: lineEntries(source, hole) },
    { title: 'In the round', entries: roundEntries(source, hole) },
    { title: 'Pins and relations', entries: [...pinEntries(source, hole), ...relationEntries(source, hole)] },
    { title: 'The hole', entries: wholeEntries(source, hole) },
  ];
}

function lineEntries({ routing, analysis, freshId, part }: MenuSource, hole: Hole): readonly MenuEntry[] {
  const of = { routing: routing.id, hole: hole.id };
  const entries: MenuEntry[] = [
    { title: 'Reverse: play it the other way', act: { do: 'edit', edit: { ...of, edit: 'reverse hole' } } },
    hole.green && Object.keys(hole.tees).length > 0
      ? { title: 'Lengthen along its line …', act: { do: 'lengthen', hole: hole.id } }
      : { title: 'Lengthen along its line …', why: 'It has no line yet.' },
  ];
  const line = analysis.holes.get(hole.id)?.tees[0]?.at;
  const bend = longestLeg(line, hole);
  if (!bend) entries.push({ title: 'Put a turn point in', why: 'It has as many as it can, or no line yet.' });
  else {
    const edit = { ...of, edit: 'add turn point' as const, turn: freshId('t'), ...bend };
    const select = { hole: hole.id, part: `turn:${edit.turn}` as const };
    entries.push({ title: 'Put a turn point in', act: { do: 'edit', edit, select } });
  }
  hole.turnPoints.forEach(({ id }, index) => {
    const chosen = part === `turn:${id}`;
    if (part?.startsWith('turn:') && !chosen) return;
    const which = chosen
      ? 'this turn point'
      : hole.turnPoints.length > 1
        ? `turn point ${index + 1}`
        : 'its turn point';
    entries.push({
      title: `Take ${which} out`,
      act: { do: 'edit', edit: { ...of, edit: 'remove turn point', turn: id }, select: { hole: hole.id } },
    });
  });
  if (hole.green)
    entries.push({ title: 'Draw the outline of its green', act: { do: 'take', instrument: 'green outline' } });
  if (hole.green?.outline) {
    const edit = { ...of, edit: 'shape green' as const, shape: oval(shapeOf(hole.green)) };
    entries.push({ title: 'Make its green an oval again', act: { do: 'edit', edit } });
  }
  return entries;
}

/** The middle of the longest leg, and how many turn points come before it. */
function longestLeg(tee: SitePoint | undefined, hole: Hole) {
  if (!tee || !hole.green || hole.turnPoints.length >= LIMITS.turnPointsPerHole) return undefined;
  const points = [tee, ...hole.turnPoints.map(({ at }) => at), hole.green.centre];
  let best: { readonly at: SitePoint; readonly place: number; readonly length: number } | undefined;
  for (const [place, from] of points.entries()) {
    const to = points[place + 1];
    if (!to) break;
    const length = distanceBetween(from, to);
    if (!best || length > best.length) best = { at: pointToMillimetre(pointBetween(from, to, 0.5)), place, length };
  }
  return best && { at: best.at, place: best.place };
}

function pinEntries({ plan, routing, names }: MenuSource, hole: Hole): readonly MenuEntry[] {
  const of = { routing: routing.id, hole: hole.id };
  const number = names.number(hole.id);
  const parts = partsInPlay(hole);
  const single = parts.map((part): MenuEntry => {
    const pinned = hole.pinned.includes(part);
    const words = partWords(plan.teeSets, number, part);
    const edit = { ...of, edit: pinned ? ('unpin' as const) : ('pin' as const), part };
    return { title: `${pinned ? 'Take the pin out of' : 'Pin'} ${words}`, act: { do: 'edit', edit } };
  });
  return single.length > 0 ? [{ title: 'Pins …', inside: single }] : [];
}

const KINDS: readonly (readonly [RelationKind, string])[] = [
  ['shares its green with', 'Shares its green with …'],
  ['crosses on purpose', 'Crosses on purpose …'],
  ['shares fairway with', 'Shares fairway with …'],
];

function relationEntries(source: MenuSource, hole: Hole): readonly MenuEntry[] {
  const { routing, names } = source;
  const stated = hole.relations.map((relation): MenuEntry => {
    const title = `No longer: ${relation.kind} ${holeWords(routing, names, relation.hole)}`;
    return { title, act: { do: 'edit', edit: { routing: routing.id, hole: hole.id, edit: 'unrelate', relation } } };
  });
  const asked = KINDS.map(([kind, title]) => entryAsking(title, askToRelate({ ...source, hole: hole.id }, kind)));
  return [...asked, ...stated];
}

function wholeEntries({ routing, freshId }: MenuSource, hole: Hole): readonly MenuEntry[] {
  const of = { routing: routing.id, hole: hole.id };
  const copy = { ...of, edit: 'copy hole' as const, as: freshId('h'), by: COPY_BY };
  return [
    verdictEntry(routing, hole),
    { title: 'Copy to the spare tray', act: { do: 'edit', edit: copy, select: { hole: copy.as } } },
    { title: 'Choose several …', act: { do: 'choose several', hole: hole.id } },
    { title: 'Remove from the plan', act: { do: 'edit', edit: { ...of, edit: 'remove hole' }, select: {} } },
  ];
}

/** A new verdict keeps the reason given before. */
function verdictEntry(routing: Routing, { id: hole, verdict: now, verdictReason: reason = '' }: Hole): MenuEntry {
  const inside = VERDICTS.map((verdict): MenuEntry => {
    if (verdict === now) return { title: verdict, why: 'So it is judged now.' };
    return { title: verdict, act: { do: 'edit', edit: { edit: 'judge', routing: routing.id, hole, verdict, reason } } };
  });
  return { title: 'Verdict …', inside };
}
