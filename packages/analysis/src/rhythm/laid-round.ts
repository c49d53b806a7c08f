import type { Hole, Plan, SiteMark, Verdict } from '@loopwright/model';
import type { Finding } from '../figures.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import { openAnalysis } from '../open-analysis.ts';

/** For tests: a hole by what the round asks of it. */
export interface RoundHoleSketch {
  readonly par?: 3 | 4 | 5;
  readonly length?: number;
  /** Compass degrees. */
  readonly heading?: number;
  /** Where its tee stands; else far from every other hole. */
  readonly tee?: readonly [x: number, y: number];
  /** Turns by 45° half way. */
  readonly bend?: 'left' | 'right';
  readonly verdict?: Verdict;
}

const USUAL = { 3: 160, 4: 350, 5: 490 } as const;

/** Far enough apart that no hole has to do with another. */
const APART = 3000;

function laidHole(sketch: RoundHoleSketch, place: number): Hole {
  const { par = 4, heading = place * 47, bend, verdict = 'undecided' } = sketch;
  const length = sketch.length ?? USUAL[par];
  const [x, y] = sketch.tee ?? [place * APART, 0];
  const towards = (degrees: number, metres: number, from: { readonly x: number; readonly y: number }) => ({
    x: from.x + metres * Math.sin((degrees * Math.PI) / 180),
    y: from.y + metres * Math.cos((degrees * Math.PI) / 180),
  });
  const tee = { x, y };
  const turn = bend && towards(heading, length / 2, tee);
  const centre = turn
    ? towards(heading + (bend === 'right' ? 45 : -45), length / 2, turn)
    : towards(heading, length, tee);
  return {
    id: `h${String(place + 1).padStart(2, '0')}`,
    seat: { in: 'loop', loop: 'l0', key: String(place) },
    tees: { back: tee },
    turnPoints: turn ? [{ id: `t${place}`, at: turn }] : [],
    green: { centre, length: 24, width: 24, bearing: 0 },
    par: { men: par, women: par },
    verdict,
    pinned: [],
    waypoints: [],
    relations: [],
  };
}

/** For tests: a plan of one round with these holes, in loops of so many. */
export function laidPlan(sketches: readonly RoundHoleSketch[], perLoop = 9, marks: readonly SiteMark[] = []): Plan {
  const holes = sketches.map(laidHole);
  const loops = Array.from({ length: Math.ceil(holes.length / perLoop) }, (_, i) => ({
    id: `l${i}`,
    name: `Loop ${i}`,
    holes: holes.slice(i * perLoop, (i + 1) * perLoop).map(({ id }) => id),
  }));
  const round = { id: 'r', name: 'Round', loops: loops.map(({ id }) => id) };
  return {
    loopwright: 1,
    site: { name: 'Invented', north: 0, bases: [], marks, features: [], images: [] },
    teeSets: [{ id: 'back', name: 'Back', player: 'scratch man' }],
    routings: [{ id: 'a', name: 'A', locked: false, loops, rounds: [round], holes, spare: [] }],
    settings: {},
    dispositions: [],
  };
}

/** For tests: what is found of one kind in a plan. */
export function findingsOf(code: FindingCode, plan: Plan): readonly Finding[] {
  return openAnalysis()
    .analyse(plan, 'a')
    .findings.filter((finding) => finding.code === code);
}

/** For tests: holes of these pars, in order. */
export function ofPars(...pars: readonly (3 | 4 | 5)[]): readonly RoundHoleSketch[] {
  return pars.map((par) => ({ par }));
}
