import type { Analysis, HoleFigures } from '@loopwright/analysis';
import type { Hole, Plan, Routing } from '@loopwright/model';

/** Two holes, a spare one without a green, and their figures, made by hand for the tests of view models. */
const tee = { x: 0, y: 0 };
const hole = (id: string, seat: Hole['seat'], verdict: Hole['verdict'] = 'undecided'): Hole => ({
  id,
  seat,
  verdict,
  tees: { back: tee },
  turnPoints: [],
  par: { men: 'by length', women: 'by length' },
  pinned: [],
  waypoints: [],
  relations: [],
});
const green = (y: number) => ({ centre: { x: 0, y }, length: 26, width: 20, bearing: 0 });

export const ROUTING: Routing = {
  id: 'a',
  name: 'Routing A',
  locked: false,
  loops: [{ id: 'front', name: 'Front nine', base: 'house', holes: ['h1', 'h2'] }],
  rounds: [{ id: 'day', name: 'Round', loops: ['front'] }],
  holes: [
    { ...hole('h1', { in: 'loop', loop: 'front', key: 'a' }, 'keeper'), green: green(365.76) },
    { ...hole('h2', { in: 'loop', loop: 'front', key: 'b' }), green: green(150) },
    hole('s1', { in: 'spare', key: 'a' }),
  ],
  spare: ['s1'],
};

export const PLAN: Plan = {
  loopwright: 1,
  site: {
    name: 'Ferrow Saltings',
    north: 0,
    bases: [{ id: 'house', name: 'Clubhouse', apron: tee, footprints: [] }],
    marks: [],
    features: [],
    images: [],
  },
  teeSets: [{ id: 'back', name: 'Back', player: 'scratch man' }],
  routings: [ROUTING],
  settings: {},
  dispositions: [],
};

const figures = (id: string, length: number, par: number): HoleFigures => ({
  id,
  centreline: [tee, { x: 0, y: length }],
  tees: [{ teeSet: 'back', at: tee, proposed: false, measuredLength: length, player: 'scratch man', landingAreas: [] }],
  par: { men: par, women: par },
  parsByLength: { men: [par], women: [par] },
  bearing: 0,
  bends: [],
  corridor: [],
  corridorStations: [],
  relations: [],
  fans: [],
});

const walk = (from: Analysis['walks'][number]['from'], to: Analysis['walks'][number]['to'], key: string) => ({
  key,
  loop: 'front',
  from,
  to,
  path: [],
  distance: 45.72,
  walkBack: 0,
  time: 33,
  crossings: [],
});

const lengths = [{ teeSet: 'back', measuredLength: 515.76, holeLengths: [365.76, 150] }];

export const ANALYSIS: Analysis = {
  routing: 'a',
  holes: new Map([
    ['h1', figures('h1', 365.76, 4)],
    ['h2', figures('h2', 150, 3)],
    ['s1', { ...figures('s1', 0, 4), missing: 'green', tees: [] }],
  ]),
  walks: [
    walk({ base: 'house' }, { hole: 'h1' }, 'house>h1'),
    walk({ hole: 'h1' }, { hole: 'h2' }, 'h1>h2'),
    walk({ hole: 'h2' }, { base: 'house' }, 'h2>house'),
  ],
  loops: [
    {
      loop: 'front',
      holes: ['h1', 'h2'],
      par: { men: 7, women: 7 },
      lengths,
      walk: 137.16,
      walkTime: 99,
      walkLengths: [45.72, 45.72, 45.72],
      bends: { left: 0, right: 0 },
      pars: [],
    },
  ],
  rounds: [
    {
      round: 'day',
      holes: ['h1', 'h2'],
      par: { men: 7, women: 7 },
      lengths,
      walk: 137.16,
      walkTime: 99,
      walkLengths: [45.72, 45.72, 45.72],
      playedLengths: lengths[0]?.holeLengths ?? [],
      onFoot: 652.92,
      timeOnFoot: 480,
      rose: [{ holes: 2, length: 515.76 }],
      lengthRatings: [],
    },
  ],
  findings: [],
};
