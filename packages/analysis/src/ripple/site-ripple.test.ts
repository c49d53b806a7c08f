import { type Feature, type HoleId, type Plan, type SitePoint, seededRandom } from '@loopwright/model';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainHole, plainPlan } from '../incremental/plain-plan.ts';
import { randomPlan } from '../incremental/random-plan.ts';
import { SITE_EDITS } from '../incremental/random-site-edit.ts';
import { openAnalysis } from '../open-analysis.ts';
import { compareAnalyses } from './compare-analyses.ts';
import type { Ripple } from './ripple.ts';

const at = (x: number, y: number): SitePoint => ({ x, y });
const rippleOf = (before: Plan, after: Plan): Ripple => {
  const analysis = openAnalysis();
  return compareAnalyses(analysis.analyse(before, 'r'), analysis.analyse(after, 'r'));
};
/** The holes that what changed speaks of: by a finding of their own, or by a walk of theirs. */
function holesNamed({ figures, findings }: Ripple): readonly HoleId[] {
  const ofFindings = findings.flatMap(({ before, after }) => [...(before?.holes ?? []), ...(after?.holes ?? [])]);
  const ofFigures = figures.flatMap(({ of }) => {
    if (of.kind === 'hole') return [of.hole];
    return of.kind === 'walk' ? [of.from, of.to].flatMap((hole) => hole ?? []) : [];
  });
  return [...new Set([...ofFindings, ...ofFigures])].sort();
}

/** Three straight holes north, 300 m apart, and a piece of wetland that may be neither carried nor mown. */
const holes = [0, 1, 2].map((place) => plainHole(`h${place + 1}`, [at(place * 300, 0), at(place * 300, 380)]));
const wetland = (west: number, buffer = 0): Feature => ({
  id: 'wet',
  kind: 'wetland',
  geometry: { type: 'area', rings: [[at(west, 100), at(west + 40, 100), at(west + 40, 140), at(west, 140)]] },
  allows: { carry: false, walk: true, mow: false, build: false },
  buffer,
});
const withWetland = (west: number, buffer?: number) => plainPlan(holes, [wetland(west, buffer)]);

describe('when a consultant’s line changes', () => {
  // By hand: between 20 and 60 m east of the first line it touches nothing; moved 280 m east it lies over the second.
  test('moved over the line of one hole, what changed names that hole and no other', () => {
    expect(holesNamed(rippleOf(withWetland(20), withWetland(280)))).toEqual(['h2']);
    expect(rippleOf(withWetland(20), withWetland(280)).findings.map(({ key }) => key)).toContain(
      'carry-over-feature|h2|wet',
    );
  });

  test('moved from one hole to another it names both: one is inside its limit again', () => {
    const ripple = rippleOf(withWetland(-20), withWetland(280));
    expect(holesNamed(ripple)).toEqual(['h1', 'h2']);
    expect(ripple.findings.find(({ key }) => key === 'carry-over-feature|h1|wet')?.change).toBe(
      'inside its limit again',
    );
  });

  // 20 m off the first line, 240 m off the second: a buffer of 30 m reaches the first only, one of 250 m both.
  test.each([
    { buffer: 10, named: [] },
    { buffer: 30, named: ['h1'] },
    { buffer: 250, named: ['h1', 'h2'] },
  ])('a buffer of $buffer m instead of none names $named', ({ buffer, named }) => {
    expect(holesNamed(rippleOf(withWetland(20), withWetland(20, buffer)))).toEqual(named);
  });

  test('a new name or authority touches nobody', () => {
    const named = plainPlan(holes, [{ ...wetland(-20), name: 'Fen', authority: 'the county' }]);
    expect(rippleOf(withWetland(-20), named)).toEqual({ figures: [], findings: [] });
  });

  test('taken away, it names the hole it lay on', () => {
    expect(holesNamed(rippleOf(withWetland(-20), plainPlan(holes)))).toEqual(['h1']);
  });
});

test('a boundary drawn nearer to one hole names that hole', () => {
  const within = (west: number): Plan => {
    const plan = plainPlan(holes);
    const outline = [at(west, -500), at(1500, -500), at(1500, 1500), at(west, 1500)];
    return { ...plan, site: { ...plan.site, boundary: { outlines: [outline], inner: [], tolerance: 0 } } };
  };
  expect(holesNamed(rippleOf(within(-500), within(-15)))).toEqual(['h1']);
});

describe('when a base changes', () => {
  const based = (apron: SitePoint, base: string): Plan => {
    const plan = plainPlan(holes);
    const bases = [
      { id: 'house', name: 'House', apron: at(0, -40), footprints: [] },
      { id: 'hut', name: 'Hut', apron, footprints: [] },
    ];
    const routings = plan.routings.map((routing) => ({
      ...routing,
      loops: routing.loops.map((loop) => ({ ...loop, base })),
    }));
    return { ...plan, site: { ...plan.site, bases }, routings };
  };

  test('moved 100 m, it names the first and the last hole by their walks, and the second by what the way home crosses', () => {
    const ripple = rippleOf(based(at(0, -40), 'hut'), based(at(0, -140), 'hut'));
    expect(holesNamed({ ...ripple, findings: [] })).toEqual(['h1', 'h3']);
    const ofOthers = ripple.findings.filter(({ after, before }) => (after ?? before)?.holes.includes('h2'));
    expect(ofOthers.every(({ key }) => key.includes('h3>hut'))).toBe(true);
  });

  test('another one chosen for the loop, the same two walks are compared', () => {
    const walks = rippleOf(based(at(0, -140), 'house'), based(at(0, -140), 'hut')).figures.filter(
      ({ of, figure }) => of.kind === 'walk' && figure === 'walk',
    );
    // The apron is 40 m from the first tee, then 140 m.
    expect(walks[0]).toMatchObject({ of: { key: 'hut>h1' }, before: 40, after: 140, better: false });
    expect(walks.map(({ of }) => of.kind === 'walk' && of.key)).toEqual(['hut>h1', 'h3>hut']);
  });
});

test('on any plan, whatever is done to the land, a hole is named for its own sake just when it would be alone there', () => {
  const alone = (plan: Plan, id: HoleId): Plan => ({
    ...plan,
    routings: plan.routings.map((routing) => ({
      ...routing,
      loops: routing.loops.map(({ base: _, ...loop }) => ({
        ...loop,
        holes: loop.holes.filter((hole) => hole === id),
      })),
      holes: routing.holes.filter((hole) => hole.id === id),
    })),
  });
  /** Holes with a finding of clearance to the site. Codes of walks and of the round are of more than one hole. */
  const touched = ({ findings }: Ripple) =>
    new Set(
      findings.flatMap(({ before, after }) => {
        const finding = after ?? before;
        const isOfSite = /^(?:edge|public|carry|landing-on|tee-on|green-on|in-range)/.test(finding?.code ?? '');
        return isOfSite && finding?.holes.length === 1 ? finding.holes : [];
      }),
    );
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 2 ** 31 }), (seed) => {
      const random = seededRandom(seed);
      const before = randomPlan(random, 4, 20);
      for (const edit of SITE_EDITS) {
        const after = edit(before, random);
        const named = touched(rippleOf(before, after));
        for (const { id } of before.routings[0]?.holes ?? []) {
          const own = touched(rippleOf(alone(before, id), alone(after, id)));
          expect(`${edit.name} ${id} ${named.has(id)}`).toBe(`${edit.name} ${id} ${own.has(id)}`);
        }
      }
    }),
    { numRuns: 8, seed: 20_261_125 },
  );
});
