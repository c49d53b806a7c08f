import type { Analysis, HoleFigures } from '@loopwright/analysis';
import { openAnalysis } from '@loopwright/analysis';
import { sentenceOf, sourceOf } from '@loopwright/analysis/wording';
import type { Note } from '@loopwright/formats';
import {
  type HoleId,
  type LengthUnit,
  type Loop,
  numberHoles,
  type Plan,
  type Routing,
  toMillimetre,
  yardsFrom,
} from '@loopwright/model';
import { placesOf } from './geojson-place.ts';
import { readerNames } from './reader-names.ts';
import type { FindingReport, HoleReport, LoopReport, Report, TotalReport } from './report.ts';
import { walksToNext } from './walks-to-next.ts';

export interface Reported {
  readonly plan: Plan;
  readonly routing: Routing;
  readonly course: string;
  readonly notes: readonly Note[];
}

/** The report on one routing: the same analysis as the page, in the sentences of a reader with these units. */
export function makeReport({ plan, routing, course, notes }: Reported, units: LengthUnit): Report {
  const analysis = openAnalysis().analyse(plan, routing.id);
  const numbers = numberHoles(routing);
  const walks = walksToNext(analysis, routing);
  return {
    loopwright: 1,
    course,
    holes: routing.loops.flatMap((loop) =>
      loop.holes.flatMap((id) => {
        const figures = analysis.holes.get(id);
        return figures ? [holeReport(figures, loop, plan, numbers.get(id) ?? 0, walks.get(id))] : [];
      }),
    ),
    loops: loopReports(analysis, routing),
    total: totalReport(analysis),
    findings: findingReports(analysis, plan, routing, numbers, units),
    importNotes: notes,
  };
}

function holeReport(
  figures: HoleFigures,
  loop: Loop,
  plan: Plan,
  number: number,
  walk: number | undefined,
): HoleReport {
  const isWhole = figures.missing === undefined;
  const teeSets = figures.tees.map(({ teeSet, measuredLength }) => {
    const name = plan.teeSets.find(({ id }) => id === teeSet)?.name ?? teeSet;
    return [name, { lengthMetres: measuredLength, lengthYards: toMillimetre(yardsFrom(measuredLength)) }] as const;
  });
  return {
    number,
    loop: loop.name,
    par: { men: figures.par.men, women: figures.par.women },
    teeSets: Object.fromEntries(teeSets),
    bearingDegrees: isWhole ? degrees(figures.bearing) : null,
    bendDegrees: isWhole ? sharpestBend(figures) : null,
    walkToNextMetres: walk ?? null,
    approachMetres: figures.tees[0]?.approach ?? null,
  };
}

/** To a hundredth of a degree: angles are known to a millionth of a radian. */
const degrees = (radians: number) => Math.round((radians * 18_000) / Math.PI) / 100 + 0;

function sharpestBend({ bends }: HoleFigures): number {
  let sharpest = 0;
  for (const { angle, side } of bends) if (angle > Math.abs(sharpest)) sharpest = side === 'right' ? angle : -angle;
  return degrees(sharpest);
}

function loopReports(analysis: Analysis, routing: Routing): readonly LoopReport[] {
  const names = new Map(routing.loops.map(({ id, name }) => [id, name]));
  return analysis.loops.map(({ loop, par, lengths, walk, walkLengths }) => ({
    name: names.get(loop) ?? loop,
    par: par.men,
    lengthMetres: lengths[0]?.measuredLength ?? 0,
    walkMetres: walk,
    walksMetres: walkLengths,
  }));
}

/** Of the first round; a board without rounds has nothing to add up. */
function totalReport({ rounds }: Analysis): TotalReport {
  const [round] = rounds;
  return {
    par: round?.par.men ?? 0,
    lengthMetres: round?.lengths[0]?.measuredLength ?? 0,
    walkMetres: round?.walk ?? 0,
    walksMetres: round?.walkLengths ?? [],
    roundMetres: round?.onFoot ?? 0,
  };
}

function findingReports(
  analysis: Analysis,
  plan: Plan,
  routing: Routing,
  numbers: ReadonlyMap<HoleId, number>,
  units: LengthUnit,
): readonly FindingReport[] {
  const names = readerNames(plan, routing, units);
  const placeOf = placesOf(plan.site);
  return analysis.findings.map((finding) => ({
    code: finding.code,
    severity: finding.severity,
    holes: finding.holes.flatMap((hole) => numbers.get(hole) ?? []),
    measured: finding.measured,
    limit: finding.limit,
    unit: finding.unit,
    place: placeOf(finding.place),
    text: sentenceOf(finding, names),
    source: sourceOf(finding),
  }));
}
