import type { FeatureId, HoleId } from '@loopwright/model';
import type { Finding } from '../figures.ts';

/** What things are called where the sentence is read: numbers and units belong to the reader. */
export interface ReaderNames {
  /** A hole's number, or what it is called while it has none. */
  number(hole: HoleId): string;
  feature(id: FeatureId): string;
  length(metres: number): string;
  angle(degrees: number): string;
}

/** A finding in parts: "Tee 7" "lies in the shot fan of 4": "31 m from the line of the approach, 160 m ahead". */
export interface Wording {
  readonly title: string;
  who(finding: Finding, names: ReaderNames): string;
  /** A verb in the present first, so that 'now' and 'no longer' can stand before it. */
  does(finding: Finding, names: ReaderNames): string;
  /** Figures and limit. */
  says(finding: Finding, names: ReaderNames): string;
}

/** The number of the finding's hole at this place in its list. */
export function hole(finding: Finding, place: number, names: ReaderNames): string {
  const id = finding.holes[place];
  return id === undefined ? '?' : names.number(id);
}

/** "4", "4 and 6", "4, 6 and 9": in the order of their numbers, those without one last. */
export function holes(finding: Finding, names: ReaderNames): string {
  const numbers = finding.holes.map((id) => names.number(id));
  return listed(numbers.toSorted((a, b) => numberOf(a) - numberOf(b)));
}

function numberOf(name: string): number {
  return /^\d+$/.test(name) ? Number(name) : Number.MAX_SAFE_INTEGER;
}

export function listed(words: readonly string[]): string {
  const last = words[words.length - 1];
  if (last === undefined) return '';
  return words.length === 1 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

/** A word or number from the finding's detail, as text; empty when it is not there. */
export function detail(finding: Finding, name: string): string {
  const value = finding.detail[name];
  return value === undefined ? '' : String(value);
}

/** A length from the finding's detail. */
export function detailLength(finding: Finding, name: string, names: ReaderNames): string {
  const value = finding.detail[name];
  return typeof value === 'number' ? names.length(value) : '';
}

/** A measured value or limit with its unit. */
export function amount(value: number, { unit }: Pick<Finding, 'unit'>, names: ReaderNames): string {
  switch (unit) {
    case 'm':
      return names.length(value);
    case 'deg':
      return names.angle(value);
    case 'share':
      return `${Math.round(value * 100)} %`;
    case 'min':
      return `${Math.round(value)} min`;
    case 'sectors':
      return `${value} of 8`;
    case 'crossings':
      return value === 1 ? 'once' : `${value} times`;
    case 'holes':
    case 'pairs':
      return String(value);
    case 'strokes':
      return value === 1 ? '1 stroke' : `${value} strokes`;
  }
}

/** "the limit is 60 m"; where both read the same once they are rounded, "just under the limit". */
export function limit(finding: Finding, names: ReaderNames): string {
  const said = amount(finding.limit, finding, names);
  return said === amount(finding.measured, finding, names) ? justBeyond(finding) : `the limit is ${said}`;
}

/** The same where the limit holds for that place: "the limit there is 43 m". */
export function limitThere(finding: Finding, names: ReaderNames): string {
  const said = amount(finding.limit, finding, names);
  return said === amount(finding.measured, finding, names)
    ? `${justBeyond(finding)} there`
    : `the limit there is ${said}`;
}

function justBeyond({ worse }: Finding): string {
  return `just ${worse === 'less' ? 'under' : 'over'} the limit`;
}

/** Metres below which a length would read as nought. */
const NOUGHT = 0.5;

/** "31 m apart", or "touching": nobody reads of something nought metres away. */
export function awayWords(metres: number, names: ReaderNames, away: string, there: string): string {
  return metres < NOUGHT ? there : `${names.length(metres)} ${away}`;
}

/** "31 m apart; the limit is 60 m". */
export function apart(finding: Finding, names: ReaderNames): string {
  return `${awayWords(finding.measured, names, 'apart', 'touching')}; ${limit(finding, names)}`;
}

/** "31 m off the line", or "on the line", of a shot. */
export function offLine({ measured }: Finding, names: ReaderNames): string {
  return awayWords(measured, names, 'off the line', 'on the line');
}

/** "in Blue + Red", where a round has a name that says more than that it is one. */
export function inRound(finding: Finding): string {
  const name = detail(finding, 'round');
  return /^(the )?round$|^$/i.test(name.trim()) ? 'in the round' : `in ${name}`;
}

export function capital(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}
