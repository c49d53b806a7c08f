import type { Feature, HoleId, LengthUnit, LoopId, PartId, Plan, Routing, TeeSet } from '@loopwright/model';
import { holeOf, numberHoles } from '@loopwright/model';
import { isolated } from './isolated.ts';
import { lengthChange, lengthWords, unitSymbol } from './lengths.ts';
import { shortName } from './short-name.ts';

/** What this reader calls the things of a plan: numbers follow from the order, lengths from the units. */
export interface Names {
  /** '6'; a spare hole has no number and goes by its name or as 'spare hole'. */
  number(hole: HoleId): string;
  feature(id: string): string;
  base(id: string): string;
  loop(id: LoopId): string;
  teeSet(id: string): string;
  length(metres: number): string;
  /** The difference of two lengths as they are shown: '+9 yd'. */
  lengthChange(before: number, after: number): string;
  angle(degrees: number): string;
}

/** What a loop goes by that is not there. */
export const LOOP_GONE = 'a loop that is gone';

/** The names of one routing for one reader. O(holes), and O(things) once a thing of that kind is asked for. */
export function namesOf(plan: Plan, routing: Routing, units: LengthUnit): Names {
  const numbers = numberHoles(routing);
  // Each when it is first asked for: a drag makes names several times in a picture, of which few speak of the land.
  const features = whenAsked(() => new Map(plan.site.features.map((feature) => [feature.id, feature])));
  const bases = whenAsked(() => calledBy(plan.site.bases, ({ name }) => name));
  const loops = whenAsked(() => calledBy(routing.loops, ({ name }) => name));
  const teeSets = whenAsked(() => calledBy(plan.teeSets, ({ name }) => name));
  return {
    number: (hole) => {
      const number = numbers.get(hole);
      return number === undefined ? spareName(routing, hole) : String(number);
    },
    feature: (id) => featureName(features().get(id)) ?? bases().get(id) ?? 'a feature that is gone',
    base: (id) => bases().get(id) ?? 'the base',
    loop: (id) => loops().get(id) ?? LOOP_GONE,
    teeSet: (id) => teeSets().get(id) ?? 'tee',
    length: (metres) => lengthWords(metres, units),
    lengthChange: (before, after) => `${lengthChange(before, after, units) || '±0'} ${unitSymbol(units)}`,
    angle: (degrees) => `${Math.round(degrees)}°`,
  };
}

function calledBy<Thing extends { readonly id: string }>(things: readonly Thing[], name: (thing: Thing) => string) {
  return new Map(things.map((thing) => [thing.id, isolated(name(thing))]));
}

const featureName = (feature: Feature | undefined) => feature && isolated(feature.name ?? `the ${feature.kind}`);

function whenAsked<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

const REMOVED = 'a removed hole';

/** What a hole out of the round goes by: its name, else its place in the tray ('spare 2'). */
export function spareName(routing: Routing, hole: HoleId): string {
  const named = holeOf(routing, hole)?.name;
  if (named) return isolated(named);
  const place = routing.spare.indexOf(hole);
  return place < 0 ? REMOVED : `spare ${place + 1}`;
}

/** 'hole 6' or 'the spare hole Old mill'. */
export function holeWords(routing: Routing, names: Names, hole: HoleId): string {
  const seat = holeOf(routing, hole)?.seat.in;
  return seat === 'loop' ? `hole ${names.number(hole)}` : names.number(hole);
}

/** 'hole 6'; a hole without a number goes by what it is called: 'spare 2', 'Old mill'. Long names are cut. */
export function holeCalled(number: string): string {
  return /^\d+$/.test(number) ? `hole ${number}` : number === REMOVED ? 'a hole' : shortName(number);
}

/** What a part of a hole is called: 'green 6', 'back tee 6', 'turn point 6'. */
export function partWords(teeSets: readonly TeeSet[], number: string, part: PartId): string {
  if (part === 'green') return `green ${number}`;
  if (part.startsWith('turn:')) return `turn point ${number}`;
  const set = teeSets.find((each) => `tee:${each.id}` === part);
  const name = set
    ? shortName(set.name)
        .toLocaleLowerCase('en')
        .replace(/\s*tees?$/, '')
    : '';
  return `${name ? `${name} ` : ''}tee ${number}`;
}
