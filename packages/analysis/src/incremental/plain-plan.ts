import type { Feature, Hole, Plan, SitePoint } from '@loopwright/model';

/** For tests: a hole of one tee and round green of 20 m, everything else as a new hole has it. */
export function plainHole(id: string, points: readonly SitePoint[], more: Partial<Hole> = {}): Hole {
  const tee = points[0];
  const green = points[points.length - 1];
  if (!tee || !green) throw new RangeError('plainHole: needs a tee and a green');
  return {
    id,
    seat: { in: 'loop', loop: 'a', key: id },
    tees: { back: tee },
    turnPoints: points.slice(1, -1).map((at, place) => ({ id: `${id}-t${place}`, at })),
    green: { centre: green, length: 20, width: 20, bearing: 0 },
    par: { men: 'by length', women: 'by length' },
    verdict: 'undecided',
    pinned: [],
    waypoints: [],
    relations: [],
    ...more,
  };
}

/** For tests: a plan of one loop with these holes in order, one tee set, no base. */
export function plainPlan(holes: readonly Hole[], features: readonly Feature[] = []): Plan {
  return {
    loopwright: 1,
    site: { name: 'Plain', north: 0, bases: [], marks: [], features, images: [] },
    teeSets: [{ id: 'back', name: 'Back', player: 'scratch man' }],
    routings: [
      {
        id: 'r',
        name: 'A',
        locked: false,
        loops: [{ id: 'a', name: 'A', holes: holes.map(({ id }) => id) }],
        rounds: [{ id: 'round', name: 'A', loops: ['a'] }],
        holes: [...holes].sort((a, b) => (a.id < b.id ? -1 : 1)),
        spare: [],
      },
    ],
    settings: {},
    dispositions: [],
  };
}
