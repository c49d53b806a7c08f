import type { Feature, Plan, SitePoint } from '@loopwright/model';
import { describe, expect, test } from 'vitest';
import type { Finding } from '../figures.ts';
import { plainHole, plainPlan } from '../incremental/plain-plan.ts';
import { openAnalysis } from '../open-analysis.ts';

const at = (x: number, y: number): SitePoint => ({ x, y });
const analyse = (plan: Plan) => openAnalysis().analyse(plan, 'r');
const codes = (findings: readonly Finding[], code: string) => findings.filter((finding) => finding.code === code);

/** A hole north to a green at (0, 300); the next tee so far east of it; a round green of 10 m radius. */
const walkOf = (east: number) =>
  plainPlan([plainHole('h1', [at(0, 0), at(0, 300)]), plainHole('h2', [at(east, 300), at(east, 700)])]);

describe('a walk', () => {
  test("is measured from the green's edge to the tee", () => {
    const { walks } = analyse(walkOf(70));
    expect(walks.map(({ distance }) => distance)).toEqual([60]);
    expect(walks[0]?.path[0]).toEqual({ x: 10, y: 300 });
  });

  test('goes by its waypoints', () => {
    const green = at(0, 300);
    const first = plainHole('h1', [at(0, 0), green], { waypoints: [at(0, 340)] });
    const { walks } = analyse(plainPlan([first, plainHole('h2', [at(30, 340), at(30, 700)])]));
    expect(walks[0]?.distance).toBe(60); // 30 from the edge to the waypoint, 30 on
  });

  test('counts the metres that the next hole wins back', () => {
    const back = plainPlan([plainHole('h1', [at(0, 0), at(0, 300)]), plainHole('h2', [at(50, 200), at(50, 600)])]);
    const { walks } = analyse(back);
    // From the edge of the green, towards (50, 200): 100 − 10·(2/√5) = 91.056 down the site, the next hole goes up it.
    expect(walks[0]?.walkBack).toBeCloseTo(91.056, 2);
    expect(analyse(walkOf(70)).walks[0]?.walkBack).toBe(0);
  });

  test('to a tee on the green is no distance', () => {
    expect(analyse(walkOf(5)).walks[0]?.distance).toBe(0);
  });

  // Limits calibrated on 31 mapped courses: mention 90, look 135, stop 300 m.
  test.each([
    { metres: 90, severity: undefined },
    { metres: 91, severity: 'mention' },
    { metres: 136, severity: 'look' },
    { metres: 301, severity: 'stop' },
  ])('of $metres m is $severity', ({ metres, severity }) => {
    const [finding] = codes(analyse(walkOf(metres + 10)).findings, 'long-walk');
    expect(finding?.severity).toBe(severity);
    if (finding) expect(finding.measured).toBe(metres);
  });

  test('between two loops has wider limits, and a base between does not lengthen it', () => {
    const plan = walkOf(240);
    const routing = plan.routings[0];
    if (!routing) throw new Error('the plain plan has a routing');
    const loops = [
      { id: 'a', name: 'A', base: 'house', holes: ['h1'] },
      { id: 'b', name: 'B', base: 'house', holes: ['h2'] },
    ];
    const rounds = [{ id: 'round', name: 'A + B', loops: ['a', 'b'] }];
    const bases = [{ id: 'house', name: 'House', apron: at(100, 900), footprints: [] }];
    const analysis = analyse({ ...plan, site: { ...plan.site, bases }, routings: [{ ...routing, loops, rounds }] });
    expect(analysis.walks.map(({ key }) => key)).toEqual(['house>h1', 'h1>house', 'house>h2', 'h2>house']);
    expect(codes(analysis.findings, 'long-walk')).toEqual([]);
    expect(
      codes(analysis.findings, 'long-walk-between-loops').map(({ measured, severity }) => [measured, severity]),
    ).toEqual([[230, 'look']]);
  });
});

/** The walk from h1 to h2 runs east along y = 310; h9 plays north across it, its tee `ahead` metres south of it. */
function crossed(ahead: number, length: number): Plan {
  const tee = at(60, 310 - ahead);
  return plainPlan([
    plainHole('h1', [at(0, 0), at(0, 310)]),
    plainHole('h2', [at(120, 310), at(500, 310)]),
    plainHole('h9', [tee, at(60, 310 - ahead + length)]),
  ]);
}

describe('a walk that crosses a line of play', () => {
  // Calibrated on 527 mapped walks: stop from 50 m ahead of the tee and 60 m before the green, look from 20 m.
  test.each([
    { ahead: -20, length: 380, severity: undefined, where: 'behind' },
    { ahead: 10, length: 380, severity: 'mention', where: 'ahead of the tee' },
    { ahead: 30, length: 380, severity: 'look', where: 'ahead of the tee' },
    { ahead: 55, length: 380, severity: 'stop', where: 'ahead of the tee' },
    { ahead: 120, length: 380, severity: 'stop', where: 'in play' },
    { ahead: 228, length: 380, severity: 'stop', where: 'at a landing area' },
    { ahead: 330, length: 380, severity: 'look', where: 'in play' },
    { ahead: 350, length: 380, severity: 'look', where: 'short of the green' },
    { ahead: 400, length: 380, severity: undefined, where: 'behind' },
  ])('$ahead m ahead of its tee ($where) is $severity', ({ ahead, length, severity, where }) => {
    const analysis = analyse(crossed(ahead, length));
    const walk = analysis.walks.find(({ key }) => key === 'h1>h2');
    const places = walk?.crossings.map(({ what }) => (what.kind === 'line of play' ? what.where : what.kind));
    expect(places).toEqual([where]);
    const [finding] = codes(analysis.findings, 'walk-crosses-line-of-play').filter(({ holes }) => holes[0] === 'h9');
    expect(finding?.severity).toBe(severity);
  });

  test('is at the place where they meet, with the metres from the tee', () => {
    const [finding] = codes(analyse(crossed(120, 380)).findings, 'walk-crosses-line-of-play');
    expect(finding?.place).toEqual({ type: 'point', at: at(60, 310) });
    expect(finding?.measured).toBe(120);
    expect(finding?.holes).toEqual(['h9', 'h1', 'h2']);
    expect(finding?.safety).toBe(true);
  });

  test("does not cross the line it starts from or ends on: one's own green and the next tee", () => {
    const { walks } = analyse(walkOf(70));
    expect(walks[0]?.crossings).toEqual([]);
  });
});

const no = { carry: false, walk: false, mow: false, build: false };

describe('a walk', () => {
  test('over a public road is a look, for the road authority', () => {
    const road: Feature = {
      id: 'lane',
      kind: 'public road',
      geometry: { type: 'line', points: [at(40, 0), at(40, 600)] },
      allows: no,
      buffer: 0,
    };
    const plan = walkOf(70);
    const { findings, walks } = analyse({ ...plan, site: { ...plan.site, features: [road] } });
    expect(walks[0]?.crossings).toEqual([{ at: at(40, 300), what: { kind: 'feature', feature: 'lane' } }]);
    const [finding] = codes(findings, 'walk-crosses-road');
    expect(finding).toMatchObject({ severity: 'look', features: ['lane'], safety: true, measured: 1 });
  });

  test('over water is a mention, round its island none', () => {
    const box = (x: number, y: number, half: number) => [
      at(x - half, y - half),
      at(x + half, y - half),
      at(x + half, y + half),
      at(x - half, y + half),
    ];
    const pond: Feature = {
      id: 'pond',
      kind: 'water',
      geometry: { type: 'area', rings: [box(40, 300, 5)] },
      allows: { ...no, carry: true },
      buffer: 0,
    };
    const plan = walkOf(70);
    const wet = analyse({ ...plan, site: { ...plan.site, features: [pond] } });
    expect(codes(wet.findings, 'walk-crosses-water')).toHaveLength(1);
    const ring: Feature = { ...pond, geometry: { type: 'area', rings: [box(40, 300, 200), box(40, 300, 60)] } };
    const dry = analyse({ ...plan, site: { ...plan.site, features: [ring] } });
    expect(codes(dry.findings, 'walk-crosses-water')).toEqual([]);
  });
});

test('all walks of a round together are judged in proportion to their number', () => {
  // Two walks of 120 m each: 240 against 1,500 · 2/17 = 176.471 and 2,000 · 2/17 = 235.294.
  const plan = plainPlan([
    plainHole('h1', [at(0, 0), at(0, 300)]),
    plainHole('h2', [at(130, 300), at(600, 300)]),
    plainHole('h3', [at(730, 300), at(730, 600)]),
  ]);
  const [finding] = codes(analyse(plan).findings, 'long-walk-in-all');
  expect(finding).toMatchObject({ measured: 240, severity: 'look', limit: 235.294 });
});
