import type { Hole, HoleId, SiteMark, SitePoint } from '@loopwright/model';
import type { SnapWishes } from '../instrument.ts';
import { type Guide, placeGuide } from './guide.ts';

const PART_OF_MARK = { 'tee site': 'tee', 'landing ground': 'turn', 'green site': 'green' } as const;

/** Site marks that such a point takes up: a green a green site, a turn a landing ground; a loose point any. */
export function markGuides(marks: readonly SiteMark[], wishes: SnapWishes): readonly Guide[] {
  return marks
    .filter(({ id, kind }) => id !== wishes.without && (isLoose(wishes) || wishes.for.includes(PART_OF_MARK[kind])))
    .map(({ at, kind, verdict }) =>
      placeGuide(at, { because: `${kind}${verdict === 'natural' ? ', natural' : ''}`, strength: 100, reach: 1.5 }),
    );
}

/** Tees and greens of other holes: one may be shared. */
export function partGuides(
  holes: readonly Hole[],
  wishes: SnapWishes,
  number: (hole: HoleId) => string,
): readonly Guide[] {
  const look = (because: string) => ({ because, strength: 80, reach: 0.9 });
  return holes.flatMap((hole) => {
    const places: Guide[] = [];
    const add = (at: SitePoint | undefined, because: string) => at && places.push(placeGuide(at, look(because)));
    if (wishes.for.includes('green') || isLoose(wishes)) add(hole.green?.centre, `green ${number(hole.id)}`);
    if (wishes.for.includes('tee') || isLoose(wishes)) {
      for (const tee of Object.values(hole.tees)) add(tee, `tee ${number(hole.id)}`);
    }
    if (wishes.for === 'anything') for (const { at } of hole.turnPoints) add(at, `turn point ${number(hole.id)}`);
    return places;
  });
}

const isLoose = (wishes: SnapWishes) => wishes.for === 'anything' || wishes.for === 'vertex';
