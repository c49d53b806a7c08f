import type { Hole, Plan } from '@loopwright/model';

/** Two loops of an invented course and a spare hole: small enough to collide often. */
export const HOLES = ['h1', 'h2', 'h3', 'h4', 'h5', 'h6', 'h7'] as const;

function hole(id: string, index: number): Hole {
  const x = index * 250;
  return {
    id,
    seat: id === 'h7' ? { in: 'spare', key: 'a0' } : { in: 'loop', loop: index < 3 ? 'out' : 'in', key: `a${index}` },
    tees: { back: { x, y: 0 }, forward: { x: x + 5, y: 60 } },
    turnPoints: index % 2 === 0 ? [{ id: 't1', at: { x: x + 40, y: 230 } }] : [],
    green: { centre: { x: x + 90, y: 410 }, length: 30, width: 22, bearing: 0.4 },
    par: { men: 'by length', women: 'by length' },
    verdict: 'undecided',
    pinned: [],
    waypoints: [],
    relations: [],
  };
}

export function boardPlan(): Plan {
  const pond = [
    { x: 50, y: 100 },
    { x: 90, y: 100 },
    { x: 90, y: 160 },
  ];
  return {
    loopwright: 1,
    site: {
      name: 'Invented site',
      north: 0,
      bases: [{ id: 'house', name: 'Clubhouse', apron: { x: 0, y: -20 }, footprints: [] }],
      marks: [],
      features: [
        {
          id: 'pond',
          kind: 'water',
          geometry: { type: 'area', rings: [pond] },
          allows: { carry: true, walk: false, mow: false, build: false },
          buffer: 5,
        },
      ],
      images: [],
    },
    teeSets: [
      { id: 'back', name: 'Back', player: 'scratch man' },
      { id: 'forward', name: 'Forward', player: 'bogey woman' },
    ],
    routings: [
      {
        id: 'a',
        name: 'A',
        locked: false,
        loops: [
          { id: 'out', name: 'Out', base: 'house', holes: ['h1', 'h2', 'h3'] },
          { id: 'in', name: 'In', base: 'house', holes: ['h4', 'h5', 'h6'] },
        ],
        rounds: [{ id: 'main', name: 'Main', loops: ['out', 'in'] }],
        holes: HOLES.map(hole),
        spare: ['h7'],
      },
    ],
    settings: {},
    dispositions: [],
  };
}
