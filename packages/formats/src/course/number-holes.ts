import { distanceBetween } from '@loopwright/geometry';
import { grouped } from '../grouped.ts';
import { counted, type NoteBook } from '../note.ts';
import { endOf, type HoleInHand, nameOf, teeOf } from './hole-in-hand.ts';

/** Holes of one group of numbers, in order; '' is the group of plain numbers. */
export interface NumberedGroup {
  readonly group: string;
  readonly holes: readonly { readonly hole: HoleInHand; readonly number: number }[];
}

export interface NumberedHoles {
  readonly groups: readonly NumberedGroup[];
  /** Beside the round: alternates, and holes mapped twice in different ways. */
  readonly spare: readonly HoleInHand[];
}

/** Fewer holes than this with a letter to their numbers are alternates, not a loop. */
const SMALLEST_LOOP = 3;

/**
 * Who is which hole: by mapped number, and where that is missing or double, by the shortest walk into the gap.
 */
export function numberedHoles(holes: readonly HoleInHand[], notes: NoteBook): NumberedHoles {
  const byGroup = grouped(holes, (hole) => hole.mapped?.group ?? '');
  const spare: HoleInHand[] = [];
  const numbered = holes.filter(({ mapped }) => mapped);
  const hasPlain = numbered.some(({ mapped }) => mapped?.group === '');
  for (const [group, members] of byGroup) {
    if (group === '' || members.length >= SMALLEST_LOOP || !hasPlain) continue;
    byGroup.delete(group);
    spare.push(...members);
    for (const hole of members) notes.add('Taken as an alternate: it is in the spare tray.', nameOf(hole));
  }
  const unnumbered = holes.filter(({ mapped }) => !mapped);
  const named = [...byGroup.keys()].filter((group) => group !== '' || numbered.length === 0 || hasPlain).sort();
  const groups = (named.length > 0 ? named : ['']).map((group, index) => {
    const members = (byGroup.get(group) ?? []).filter(({ mapped }) => mapped);
    return numberedGroup(group, members, index === 0 ? unnumbered : [], notes);
  });
  return { groups, spare };
}

function numberedGroup(
  group: string,
  members: readonly HoleInHand[],
  unnumbered: readonly HoleInHand[],
  notes: NoteBook,
): NumberedGroup {
  const byNumber = new Map<number, HoleInHand>();
  const loose: HoleInHand[] = [...unnumbered];
  const candidates = grouped(members, ({ mapped }) => mapped?.number ?? 0);
  for (const [number, claims] of candidates) if (claims.length === 1 && claims[0]) byNumber.set(number, claims[0]);
  for (const [number, claims] of [...candidates].sort(([a], [b]) => a - b)) {
    if (claims.length === 1) continue;
    const best = rightfulHolder(claims, number, byNumber);
    if (!best) continue;
    byNumber.set(number, best);
    loose.push(...claims.filter((claim) => claim !== best));
    notes.add(
      `${counted(claims.length, 'hole')} carry the number ${group}${number}: the one with the shorter walk keeps it.`,
    );
  }
  fillGaps(byNumber, loose, notes);
  const holes = [...byNumber].sort(([a], [b]) => a - b).map(([number, hole]) => ({ number, hole }));
  noteMissing(
    group,
    holes.map(({ number }) => number),
    notes,
  );
  return { group, holes };
}

/**
 * Which of several holes with one number keeps it: where a number beside it is free, the other of two is taken to be that
 * one, and the order with the shorter walks holds.
 */
function rightfulHolder(
  claims: readonly HoleInHand[],
  number: number,
  byNumber: ReadonlyMap<number, HoleInHand>,
): HoleInHand | undefined {
  const [first, second] = claims;
  if (!first || !second || claims.length > 2)
    return nearestInto(claims, byNumber.get(number - 1), byNumber.get(number + 1));
  const order = (claim: HoleInHand, other: HoleInHand) => {
    if (!byNumber.has(number + 1)) return [byNumber.get(number - 1), claim, other, byNumber.get(number + 2)];
    if (number > 1 && !byNumber.has(number - 1))
      return [byNumber.get(number - 2), other, claim, byNumber.get(number + 1)];
    return [byNumber.get(number - 1), claim, byNumber.get(number + 1)];
  };
  return walked(order(second, first)) < walked(order(first, second)) ? second : first;
}

/** Metres walked through some holes in order; ends that are not known cost nothing. */
function walked(order: readonly (HoleInHand | undefined)[]): number {
  let sum = 0;
  for (const [index, to] of order.entries()) {
    const from = order[index - 1];
    if (from && to) sum += distanceBetween(endOf(from), teeOf(to));
  }
  return sum;
}

/** The hole with the shortest walks from the hole before and to the hole after, where those are known. */
function nearestInto(
  claims: readonly HoleInHand[],
  before: HoleInHand | undefined,
  after: HoleInHand | undefined,
): HoleInHand | undefined {
  const walk = (hole: HoleInHand) =>
    (before ? distanceBetween(endOf(before), teeOf(hole)) : 0) +
    (after ? distanceBetween(endOf(hole), teeOf(after)) : 0);
  let best: HoleInHand | undefined;
  for (const claim of claims) if (best === undefined || walk(claim) < walk(best)) best = claim;
  return best;
}

/** Holes without a number of their own go where a number is free, by the shortest walk; the rest come last. */
function fillGaps(byNumber: Map<number, HoleInHand>, loose: readonly HoleInHand[], notes: NoteBook): void {
  let left = [...loose];
  for (let number = 1; left.length > 0; number++) {
    if (byNumber.has(number)) continue;
    const best = nearestInto(left, byNumber.get(number - 1), byNumber.get(number + 1));
    if (!best) return;
    byNumber.set(number, best);
    left = left.filter((hole) => hole !== best);
    const why = best.mapped ? "Its number is another hole's too" : 'It has no number';
    notes.add(`${why}: by its place it was taken as hole ${number}.`, nameOf(best));
  }
}

function noteMissing(group: string, numbers: readonly number[], notes: NoteBook): void {
  const last = Math.max(0, ...numbers);
  const there = new Set(numbers);
  const missing = Array.from({ length: last }, (_, index) => index + 1).filter((number) => !there.has(number));
  if (missing.length === 0) return;
  const names = missing.slice(0, 9).map((number) => `${group}${number}`);
  const more = missing.length > names.length ? ' …' : '';
  const one = missing.length === 1;
  notes.add(
    `${one ? 'Hole' : 'Holes'} ${names.join(', ')}${more} ${one ? 'is' : 'are'} not in the file: on the board the holes after move up.`,
  );
}
