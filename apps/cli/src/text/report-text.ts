import type { LengthUnit } from '@loopwright/model';
import type { Report } from '../report/report.ts';
import { cardLines, groupedDigits, walkSum } from './card-text.ts';
import { findingLines } from './findings-text.ts';
import { hanging } from './wrapped.ts';

/** The international mile, exact by definition (1959 agreement). */
const METRES_PER_MILE = 1609.344;

/** Columns of the page: fits a terminal and a printed sheet. */
const WIDTH = 92;

/** The report as people read it. */
export function reportText(report: Report, routing: string, units: LengthUnit): string {
  const title = (words: string) => ['', words, '═'.repeat([...words].length)];
  const notes = report.importNotes.flatMap(({ about, what }) =>
    hanging('  · ', about === undefined ? what : `${about}: ${what}`, WIDTH),
  );
  const lines = [
    report.course,
    `Routing '${routing}', lengths in ${units}`,
    ...title('Card'),
    ...(report.holes.length > 0 ? cardLines(report, units) : ['No holes are in play on this routing.']),
    ...title('On foot'),
    ...onFootLines(report, units),
    ...title('Findings'),
    ...findingLines(report, WIDTH),
    ...(notes.length > 0 ? [...title('How the file was taken in'), ...notes] : []),
  ];
  return `${lines.join('\n')}\n`;
}

function onFootLines({ loops, total }: Report, units: LengthUnit): readonly string[] {
  const unit = units === 'yards' ? 'yd' : 'm';
  const walks = loops.map((loop) => `${loop.name} ${groupedDigits(walkSum(loop, units))} ${unit}`).join(', ');
  const played = total.roundMetres - total.walkMetres;
  const far = (metres: number) =>
    units === 'yards' ? `${(metres / METRES_PER_MILE).toFixed(2)} miles` : `${(metres / 1000).toFixed(2)} km`;
  return [
    `Walks between greens and tees, and to and from the base: ${walks}.`,
    `A round on foot: ${far(total.roundMetres)}, ${far(played)} of it played and ${far(total.walkMetres)} walked, in straight lines.`,
    'Climbs: no ground yet.',
  ];
}
