import {
  type Base,
  type Feature,
  type Hole,
  type ImageLayer,
  orderKeyAt,
  type Plan,
  parsePlan,
  type Routing,
  type Site,
  type SiteMark,
  type Sketch,
  type TeeSet,
} from '@loopwright/model';
import type { Write } from '../cells.ts';
import { RELATION_WORDS } from '../reading/read-hole.ts';
import type { Reading } from '../reading/reading.ts';
import type { Root } from '../roots.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { partsOfImage, partsOfSketch } from './thing-parts.ts';

/**
 * Writes a whole plan into a document without holes, e.g. an imported course. Over holes it changes nothing.
 *
 * @throws RangeError if the plan could not be read again: importers parse before they lay out
 */
export function layOutPlan(edit: EditNamed<'lay out plan'>, reading: Reading): EditWrites {
  if (reading.plan.routings.some((routing) => routing.holes.length > 0)) return 'nothing';
  const parsed = parsePlan(edit.plan);
  if (parsed.kind === 'not-a-plan') throw new RangeError(`lay out plan: ${parsed.why}`);
  return writesOfPlan(parsed.plan);
}

function writesOfPlan(plan: Plan): readonly Write[] {
  return [
    ...writesOfSite(plan.site),
    ...plan.teeSets.flatMap((teeSet: TeeSet, index) => thing('teeSets', teeSet.id, index, withoutId(teeSet))),
    ...plan.routings.flatMap(writesOfRouting),
    ...fields('settings', '', plan.settings),
    ...plan.dispositions.map(({ routing, finding, kind, words, measured }): Write => {
      return { root: 'dispositions', group: `${routing}/${finding}`, part: '', value: { kind, words, measured } };
    }),
  ];
}

/** One write a field; fields without a value are left unwritten. */
function fields(root: Root, group: string, values: object): readonly Write[] {
  return Object.entries(values)
    .filter(([, value]) => value !== undefined)
    .map(([part, value]): Write => ({ root, group, part, value }));
}

/** A thing among its like: its seat and its fields. */
function thing(root: Root, group: string, index: number, values: object): readonly Write[] {
  return [{ root, group, part: 'seat', value: { in: 'plan', key: orderKeyAt(index) } }, ...fields(root, group, values)];
}

function withoutId<T extends { readonly id: string }>(value: T): Omit<T, 'id'> {
  const { id: _, ...rest } = value;
  return rest;
}

function writesOfSite(site: Site): readonly Write[] {
  const { bases, marks, features, images, sketches = [], ...frame } = site;
  return [
    ...fields('site', '', frame),
    ...bases.flatMap((base: Base, index) => thing('bases', base.id, index, withoutId(base))),
    ...marks.flatMap((mark: SiteMark, index) => thing('marks', mark.id, index, withoutId(mark))),
    ...features.flatMap((feature: Feature, index) => thing('features', feature.id, index, withoutId(feature))),
    ...images.flatMap(writesOfImage),
    ...sketches.flatMap(writesOfSketch),
  ];
}

function writesOfImage(image: ImageLayer, index: number): readonly Write[] {
  return thing('images', image.id, index, partsOfImage(image));
}

function writesOfSketch(sketch: Sketch, index: number): readonly Write[] {
  return thing('sketches', sketch.id, index, partsOfSketch(sketch));
}

function writesOfRouting(routing: Routing, index: number): readonly Write[] {
  const { id, name, locked, loops, rounds, holes } = routing;
  return [
    ...thing('routings', id, index, { name, locked }),
    ...loops.flatMap((loop, place) => {
      const { id: loopId, holes: _, ...frame } = loop;
      return thing('loops', `${id}/${loopId}`, place, frame);
    }),
    ...rounds.flatMap((round, place) => thing('rounds', `${id}/${round.id}`, place, withoutId(round))),
    ...holes.flatMap((hole) => writesOfHole(id, hole)),
  ];
}

function writesOfHole(routing: string, hole: Hole): readonly Write[] {
  const { centre, ...shape } = hole.green ?? {};
  const { men, women } = hole.par;
  const isJudged = hole.verdict !== 'undecided' || hole.verdictReason !== undefined;
  const parts = [
    ...Object.entries(hole.tees).map(([teeSet, at]) => [`tee:${teeSet}`, at]),
    ...hole.turnPoints.map(({ id, at }, place) => [`turn:${id}`, { ...at, order: orderKeyAt(place) }]),
    ...hole.pinned.map((part) => [`pin:${part}`, true]),
    ...hole.relations.map(({ kind, hole: other }) => [`relation:${RELATION_WORDS[kind]}:${other}`, true]),
  ];
  return fields('holes', `${routing}/${hole.id}`, {
    seat: hole.seat,
    name: hole.name,
    note: hole.note,
    green: centre,
    'green-shape': centre ? shape : undefined,
    'par-men': men === 'by length' ? undefined : men,
    'par-women': women === 'by length' ? undefined : women,
    verdict: isJudged ? { verdict: hole.verdict, reason: hole.verdictReason ?? '' } : undefined,
    corridor: hole.corridor,
    waypoints: hole.waypoints.length > 0 ? hole.waypoints : undefined,
    ...Object.fromEntries(parts),
  });
}
