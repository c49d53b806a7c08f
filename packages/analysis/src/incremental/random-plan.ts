import type { Feature, Hole, LoopId, Plan, SitePoint } from '@loopwright/model';
import { pointToMillimetre } from '@loopwright/model';

/** For tests and benches: numbers in [0, 1). */
type Random = () => number;

/** Side of the invented site, metres. */
const SIDE = 1400;

const somewhere = (random: Random): SitePoint => pointToMillimetre({ x: random() * SIDE, y: random() * SIDE });

const near = (at: SitePoint, metres: number, random: Random): SitePoint =>
  pointToMillimetre({ x: at.x + (random() * 2 - 1) * metres, y: at.y + (random() * 2 - 1) * metres });

/** A hole from a tee near `from`, whichever way the site goes on: 120 to 520 m long, sometimes bent. */
function randomHole(place: number, loop: LoopId, from: SitePoint, random: Random): Hole {
  const tee = near(from, 50, random);
  const middle = Math.atan2(SIDE / 2 - tee.x, SIDE / 2 - tee.y);
  const turn = middle + (random() - 0.5) * 4;
  const length = 120 + random() * 400;
  const towards = { x: Math.sin(turn), y: Math.cos(turn) };
  const along = (share: number) => ({ x: tee.x + towards.x * length * share, y: tee.y + towards.y * length * share });
  const name = `h${String(place).padStart(2, '0')}`;
  return {
    id: name,
    seat: { in: 'loop', loop, key: name },
    tees: { back: tee, ...(random() < 0.3 && { forward: near(along(0.2), 15, random) }) },
    turnPoints: random() < 0.5 ? [{ id: `${name}-t`, at: near(along(0.6), 40, random) }] : [],
    green: {
      centre: pointToMillimetre(along(1)),
      length: 20 + random() * 15,
      width: 15 + random() * 15,
      bearing: turn,
    },
    par: { men: 'by length', women: 'by length' },
    verdict: 'undecided',
    pinned: [],
    waypoints: random() < 0.2 ? [near(along(1), 80, random)] : [],
    relations: [],
  };
}

function randomFeature(place: number, random: Random): Feature {
  const at = somewhere(random);
  const kinds = ['water', 'public road', 'public path', 'trees', 'neighbour', 'building', 'protected'] as const;
  const kind = kinds[Math.floor(random() * kinds.length)] ?? 'water';
  const isLine = kind === 'public road' || kind === 'public path';
  const allows = {
    carry: kind === 'water',
    walk: kind === 'trees' || kind === 'public path',
    mow: false,
    build: false,
  };
  const corners = Array.from({ length: 8 }, (_, corner) => {
    const angle = (corner * Math.PI) / 4;
    const radius = 15 + random() * 40;
    return pointToMillimetre({ x: at.x + radius * Math.cos(angle), y: at.y + radius * Math.sin(angle) });
  });
  return {
    id: `f${String(place).padStart(2, '0')}`,
    kind,
    geometry: isLine
      ? { type: 'line', points: [at, near(at, 300, random), near(at, 500, random)] }
      : { type: 'area', rings: [corners] },
    allows,
    buffer: random() * 5,
  };
}

/** An invented plan: two loops from one base, features and a boundary; for tests and benches only. */
export function randomPlan(random: Random, holesInLoop = 9, features = 40): Plan {
  const holes: Hole[] = [];
  let from = somewhere(random);
  for (let place = 0; place < 2 * holesInLoop; place++) {
    const hole = randomHole(place, place < holesInLoop ? 'out' : 'in', from, random);
    holes.push(hole);
    from = hole.green?.centre ?? from;
  }
  const ids = holes.map(({ id }) => id);
  const corner = (x: number, y: number) => ({ x: x * SIDE, y: y * SIDE });
  return {
    loopwright: 1,
    site: {
      name: 'Anywhere',
      north: 0,
      boundary: {
        outlines: [[corner(-0.1, -0.1), corner(1.1, -0.1), corner(1.1, 1.1), corner(-0.1, 1.1)]],
        inner: [],
        tolerance: 0,
      },
      bases: [{ id: 'house', name: 'House', apron: somewhere(random), footprints: [] }],
      marks: [],
      features: Array.from({ length: features }, (_, place) => randomFeature(place, random)),
      images: [],
    },
    teeSets: [
      { id: 'back', name: 'Back', player: 'scratch man' },
      { id: 'middle', name: 'Middle', player: 'bogey man' },
      { id: 'forward', name: 'Forward', player: 'bogey woman' },
    ],
    routings: [
      {
        id: 'r',
        name: 'A',
        locked: false,
        loops: [
          { id: 'out', name: 'Out', base: 'house', holes: ids.slice(0, holesInLoop) },
          { id: 'in', name: 'In', holes: ids.slice(holesInLoop) },
        ],
        rounds: [{ id: 'round', name: 'Out and in', loops: ['out', 'in'] }],
        holes,
        spare: [],
      },
    ],
    settings: {},
    dispositions: [],
  };
}
