// The busiest board a drag is measured on: 27 holes in three nines, 200 features, and the demo's land beneath.
import { demoPlan } from '@loopwright/demo';
import {
  type Feature,
  type Hole,
  type Plan,
  presetOf,
  type Routing,
  type SitePoint,
  seededRandom,
} from '@loopwright/model';

const FEATURES = 200;
const CORNERS = 12;
/** The third nine is the first again, so far east of it that the two do not meet. */
const EAST: SitePoint = { x: 1500, y: 0 };

const moved = ({ x, y }: SitePoint): SitePoint => ({ x: x + EAST.x, y: y + EAST.y });

function copied(hole: Hole): Hole {
  const { green, ...rest } = hole;
  return {
    ...rest,
    id: `${hole.id}-east`,
    seat: { in: 'loop', loop: 'east-again', key: hole.seat.key },
    tees: Object.fromEntries(Object.entries(hole.tees).map(([teeSet, at]) => [teeSet, moved(at)])),
    turnPoints: hole.turnPoints.map(({ id, at }) => ({ id, at: moved(at) })),
    ...(green && { green: { ...green, centre: moved(green.centre) } }),
    waypoints: hole.waypoints.map(moved),
    relations: [],
  };
}

function withThirdNine(routing: Routing): Routing {
  const first = routing.loops[0];
  if (!first) throw new Error('the demo has a first nine');
  const third = routing.holes.filter(({ id }) => first.holes.includes(id)).map(copied);
  const { base: _, ...loop } = first;
  return {
    ...routing,
    loops: [...routing.loops, { ...loop, id: 'east-again', name: 'Third', holes: third.map(({ id }) => id) }],
    rounds: [...routing.rounds, { id: 'third', name: 'Third', loops: ['east-again'] }],
    holes: [...routing.holes, ...third].sort((a, b) => (a.id < b.id ? -1 : 1)),
  };
}

/** A pond, wood or wet corner of some 40 m, anywhere on the land of the three nines. */
function feature(index: number, random: () => number): Feature {
  const kind = (['water', 'trees', 'wetland', 'bunker', 'protected'] as const)[index % 5] ?? 'water';
  const middle = { x: -200 + random() * 3000, y: -100 + random() * 1300 };
  const ring = Array.from({ length: CORNERS }, (_, corner) => {
    const angle = (2 * Math.PI * corner) / CORNERS;
    const radius = 10 + 20 * random();
    return { x: middle.x + radius * Math.cos(angle), y: middle.y + radius * Math.sin(angle) };
  });
  return { id: `busy-${index}`, kind, geometry: { type: 'area', rings: [ring] }, ...presetOf(kind) };
}

/** A plan of 27 holes and so many features, always the same. */
export function busyPlan(features = FEATURES): Plan {
  const plan = demoPlan();
  const random = seededRandom(27);
  const more = Array.from({ length: features - plan.site.features.length }, (_, index) => feature(index, random));
  return {
    ...plan,
    site: { ...plan.site, features: [...plan.site.features, ...more] },
    routings: plan.routings.slice(0, 1).map(withThirdNine),
  };
}
