import { cardLength, type LengthUnit } from '@loopwright/model';
import type { HoleReport, Report } from '../report/report.ts';
import { type Column, type Row, tableLines } from './table.ts';

/** A whole number with its thousands apart: 6,382. */
export function groupedDigits(value: number): string {
  return String(Math.round(value)).replace(/\B(?=(\d{3})+$)/g, ',');
}

/** The card, hole by hole, with a total for each loop and for the first round; each length rounded before it is summed. */
export function cardLines({ holes, loops, total }: Report, units: LengthUnit): readonly string[] {
  const teeSets = [...new Set(holes.flatMap((hole) => Object.keys(hole.teeSets)))];
  const columns: readonly Column[] = [
    { heading: 'Hole', align: 'right' },
    { heading: 'Par', align: 'right' },
    ...teeSets.map((heading): Column => ({ heading, align: 'right' })),
    { heading: 'Plays', align: 'right' },
    { heading: 'Bend', align: 'left' },
    { heading: 'Approach', align: 'right' },
    { heading: 'Walk to next', align: 'right' },
  ];
  const short = (metres: number | null) => (metres === null ? '–' : groupedDigits(cardLength(metres, units)));
  const sums = (own: readonly HoleReport[]) => teeSets.map((name) => groupedDigits(cardSum(own, name, units)));
  const rows = loops.flatMap((loop): Row[] => {
    const own = holes.filter((hole) => hole.loop === loop.name);
    const ofHoles = own.map(
      (hole): Row => [
        String(hole.number),
        parWords(hole),
        ...teeSets.map((name) => short(hole.teeSets[name]?.lengthMetres ?? null)),
        direction(hole.bearingDegrees),
        bendWords(hole.bendDegrees),
        short(hole.approachMetres),
        short(hole.walkToNextMetres),
      ],
    );
    const totals: Row = [loop.name, String(loop.par), ...sums(own), '', '', '', groupedDigits(walkSum(loop, units))];
    return [...ofHoles, 'rule', totals, 'rule'];
  });
  if (loops.length !== 2) return tableLines(columns, rows.slice(0, -1));
  const round: Row = ['Total', String(total.par), ...sums(holes), '', '', '', groupedDigits(walkSum(total, units))];
  return tableLines(columns, [...rows, round]);
}

function cardSum(holes: readonly HoleReport[], teeSet: string, units: LengthUnit): number {
  return holes.reduce((sum, hole) => sum + cardLength(hole.teeSets[teeSet]?.lengthMetres ?? 0, units), 0);
}

/** Walks as a card sums them: each rounded first. */
export function walkSum({ walksMetres }: Pick<Report['total'], 'walksMetres'>, units: LengthUnit): number {
  return walksMetres.reduce((sum, walk) => sum + cardLength(walk, units), 0);
}

/** '4', or '4/5' where women's par differs. */
function parWords({ par }: HoleReport): string {
  return par.men === par.women ? String(par.men) : `${par.men}/${par.women}`;
}

const WINDS = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'];

function direction(degrees: number | null): string {
  if (degrees === null) return '–';
  const whole = Math.round(degrees) % 360;
  return `${WINDS[Math.round(whole / 45) % 8]} ${String(whole).padStart(3, ' ')}°`;
}

/** Bends of less than this are straight to the eye. */
const STRAIGHT = 5;

function bendWords(degrees: number | null): string {
  if (degrees === null) return 'incomplete';
  if (Math.abs(degrees) < STRAIGHT) return 'straight';
  return `${degrees > 0 ? 'right' : 'left'} ${Math.round(Math.abs(degrees))}°`;
}
