import type { CanvasPoint, FindingKey, HoleId, SitePoint } from '@loopwright/model';
import { discRadius } from './disc-radius.ts';
import type { FeatureView } from './feature-view.ts';
import type { FindingView } from './finding-view.ts';
import type { HoleView } from './hole-view.ts';
import { type Label, placeLabels, placesAround } from './label-placement.ts';
import { toCanvas, toSite, type View } from './site-transform.ts';

/** A name written on the drawing. */
export interface NameLabel {
  readonly id: string;
  readonly text: string;
  readonly at: SitePoint;
  readonly manner: FeatureView['manner'];
}

/** Where everything that is written or marked stands, so that nothing covers a hole number. */
export interface Labels {
  readonly numbers: ReadonlyMap<HoleId, SitePoint>;
  readonly findings: ReadonlyMap<FindingKey, SitePoint>;
  readonly names: readonly NameLabel[];
}

/** Pixels: the box kept free about a symbol, a tee, and a finding's sign; paper around a number and a green. */
const SYMBOL_BOX = 13;
const TEE_BOX = 6;
const SIGN_BOX = 8;
const PAPER = 1.5;
/** Where a sign stands that would hide what it is about: around it, then further off. */
const SIGN_STEPS = [18, 30, 42];
const NAME_HEIGHT = 9;
/** Roughly, of the serif at the size names are written in. */
const LETTER_WIDTH = 7;
/** A name may be this much wider than what it names. */
const OVERHANG = 1.3;

/**
 * Places numbers first, then findings (the worst first) clear of tees and greens, then names where there is room.
 *
 * @param symbols  bases and the like: no name covers them
 * @param scale  pixels per metre; panning changes nothing here
 */
export function layLabels(
  holes: readonly HoleView[],
  findings: readonly FindingView[],
  features: readonly FeatureView[],
  symbols: readonly SitePoint[],
  scale: number,
): Labels {
  const view: View = { scale, x: 0, y: 0 };
  const numberBox = discRadius(scale) + PAPER;
  const number = (hole: HoleView): Label => ({
    id: `hole ${hole.id}`,
    places: hole.numberPlaces.map((at) => toCanvas(view, at)),
    halfWidth: numberBox,
    halfHeight: numberBox,
    when: 'always',
  });
  const sign = (finding: FindingView): Label => ({
    id: `finding ${finding.key}`,
    places: SIGN_STEPS.flatMap((step) => placesAround(toCanvas(view, finding.at), step)),
    halfWidth: SIGN_BOX,
    halfHeight: SIGN_BOX,
    when: 'always',
  });
  const named = features.filter((feature) => fits(feature, scale));
  const name = (feature: FeatureView): Label => ({
    id: `name ${feature.id}`,
    places: namePlaces(feature, toCanvas(view, feature.labelAt)),
    halfWidth: ((feature.label?.length ?? 0) * LETTER_WIDTH) / 2,
    halfHeight: NAME_HEIGHT,
    when: 'if there is room',
  });
  const points = [...symbols, ...features.flatMap((feature) => feature.at ?? [])];
  const symbol = (place: SitePoint, index: number): Label => ({
    id: `symbol ${index}`,
    places: [toCanvas(view, place)],
    halfWidth: SYMBOL_BOX,
    halfHeight: SYMBOL_BOX,
    when: 'always',
  });
  const placed = placeLabels([
    ...holes.map(number),
    ...holes.flatMap((hole) => partBoxes(hole, view)),
    ...findings.toReversed().map(sign),
    ...points.map(symbol),
    ...named.map(name),
  ]);
  const at = (id: string): SitePoint | undefined => {
    const place = placed.get(id);
    return place && toSite(view, place);
  };
  return {
    numbers: new Map(holes.flatMap(({ id }) => pair(id, at(`hole ${id}`)))),
    findings: new Map(findings.flatMap(({ key }) => pair(key, at(`finding ${key}`)))),
    names: named.flatMap(({ id, label, manner }) => {
      const place = at(`name ${id}`);
      return place && label ? [{ id, text: label, at: place, manner }] : [];
    }),
  };
}

/** The ground that tees and the green of a hole take up: they stand where they are, and other things beside them. */
function partBoxes({ id, tees, green }: HoleView, view: View): readonly Label[] {
  const boxes = tees.map((tee) => ({ id: `${id} ${tee.part}`, at: tee.at, half: TEE_BOX }));
  if (green) boxes.push({ id: `${id} green`, at: green.at, half: green.reach * view.scale + PAPER });
  return boxes.map(({ id, at, half }) => ({
    id,
    places: [toCanvas(view, at)],
    halfWidth: half,
    halfHeight: half,
    when: 'always',
  }));
}

/** In an area; beside a line; below or above a point: a name covers what it names only where there is room inside. */
function namePlaces(feature: FeatureView, at: CanvasPoint): readonly CanvasPoint[] {
  const places = placesAround(at, 2.4 * NAME_HEIGHT);
  if (feature.at || feature.line)
    return [...places.slice(1), at].sort((a, b) => besideFirst(at, a) - besideFirst(at, b));
  return places;
}

/** Below and above before left and right, the place itself last. */
function besideFirst(at: CanvasPoint, place: CanvasPoint): number {
  if (place.x === at.x) return place.y === at.y ? 3 : 0;
  return place.y === at.y ? 2 : 1;
}

const pair = <Key>(key: Key, at: SitePoint | undefined): [Key, SitePoint][] => (at ? [[key, at]] : []);

function fits({ label, across }: FeatureView, scale: number): boolean {
  return label !== undefined && label.length * LETTER_WIDTH <= across * scale * OVERHANG;
}

/** The same labels kept where nothing moved by as much as a twentieth of a pixel, so that views need not draw again. */
export function keepSteady(before: Labels | undefined, after: Labels, scale: number): Labels {
  if (!before) return after;
  const near = 0.05 / scale;
  const steady = <Key>(was: ReadonlyMap<Key, SitePoint>, now: ReadonlyMap<Key, SitePoint>) =>
    new Map([...now].map(([key, at]) => [key, nearOr(was.get(key), at, near)]));
  const sameNames =
    before.names.length === after.names.length &&
    before.names.every((name, index) => {
      const other = after.names[index];
      return other?.text === name.text && nearOr(name.at, other.at, near) === name.at;
    });
  return {
    numbers: steady(before.numbers, after.numbers),
    findings: steady(before.findings, after.findings),
    names: sameNames ? before.names : after.names,
  };
}

function nearOr(was: SitePoint | undefined, now: SitePoint, near: number): SitePoint {
  return was && Math.abs(was.x - now.x) <= near && Math.abs(was.y - now.y) <= near ? was : now;
}
