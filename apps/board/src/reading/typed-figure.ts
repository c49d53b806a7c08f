import { type LengthUnit, LIMITS, metresFromYards } from '@loopwright/model';

/** What was typed into a field for one figure: its value, or what was wrong with it in words. */
export type TypedFigure =
  | { readonly kind: 'figure'; readonly value: number; readonly signed: boolean }
  | { readonly kind: 'wrong'; readonly why: string };

const FIGURE = /^([+\-−–]?)\s*((?:\d[\d.,'’\s]*)?\d|[.,]\d+)\s*(.*)$/u;
const METRES = /^(?:m|metres?|meters?)$/i;
const YARDS = /^(?:y|yds?|yards?)$/i;
const DEGREES = /^(?:°|deg|degrees?)$/i;
/** Anything longer is no figure. */
const LONGEST_WORD = 40;

/**
 * A length as people type it: '380', '380 yd', '1.234,5 m', '−12'. Without a unit it is in the reader's.
 *
 * @returns metres; `signed` when it began with a sign, so that a field may read '+10' as ten more
 */
export function parseTypedLength(text: string, units: LengthUnit): TypedFigure {
  const parts = figureAndUnit(text);
  if (parts.kind === 'wrong') return parts;
  const { figure, unit, signed } = parts;
  if (unit !== '' && !METRES.test(unit) && !YARDS.test(unit)) return wrongUnit(unit, 'm or yd');
  const isYards = unit === '' ? units === 'yards' : YARDS.test(unit);
  return withinPlane(isYards ? metresFromYards(figure) : figure, signed);
}

/** A coordinate: metres on the site plane, whatever the reader's unit; yards when they are typed. */
export function parseTypedCoordinate(text: string): TypedFigure {
  return parseTypedLength(text, 'metres');
}

/** A bearing in degrees clockwise from north, as radians: '45', '045°', '360' is north. */
export function parseTypedBearing(text: string): TypedFigure {
  const parts = figureAndUnit(text);
  if (parts.kind === 'wrong') return parts;
  const { figure, unit, signed } = parts;
  if (unit !== '' && !DEGREES.test(unit)) return wrongUnit(unit, 'degrees');
  if (figure < 0 || figure > 360) return { kind: 'wrong', why: 'A bearing goes from 0 to 360 degrees.' };
  return { kind: 'figure', value: ((figure % 360) * Math.PI) / 180, signed };
}

function figureAndUnit(text: string) {
  const words = text.trim();
  if (words === '') return { kind: 'wrong', why: 'Nothing was typed.' } as const;
  const found = words.length > LONGEST_WORD ? null : FIGURE.exec(words);
  const figure = found ? decimal(found[2] ?? '') : undefined;
  if (!found || figure === undefined) {
    return { kind: 'wrong', why: `‘${shortened(words)}’ is not a figure.` } as const;
  }
  const [, sign = '', , unit = ''] = found;
  const isMinus = sign !== '' && sign !== '+';
  return { kind: 'read', figure: isMinus ? -figure : figure, unit: unit.trim(), signed: sign !== '' } as const;
}

/**
 * Digits with points, commas, apostrophes and spaces between them. Where points and commas both occur the last one is
 * the decimal sign; one that stands several times parts thousands; a single comma does before exactly three digits.
 */
function decimal(text: string): number | undefined {
  const plain = text.replace(/[\s'’]/gu, '');
  const [points, commas] = [plain.split('.').length - 1, plain.split(',').length - 1];
  const lastIsComma = plain.lastIndexOf(',') > plain.lastIndexOf('.');
  const mark = points > 0 && commas > 0 ? (lastIsComma ? ',' : '.') : soleMark(plain, points, commas);
  const thousands = mark === ',' ? '.' : ',';
  const joined = mark === '' ? plain.replace(/[.,]/g, '') : plain.split(thousands).join('').replace(mark, '.');
  const figure = Number(joined);
  return joined !== '' && Number.isFinite(figure) ? figure : undefined;
}

function soleMark(plain: string, points: number, commas: number): '' | '.' | ',' {
  if (points === 1) return '.';
  if (commas === 1) return /^\d{1,3},\d{3}$/.test(plain) ? '' : ',';
  return '';
}

function withinPlane(metres: number, signed: boolean): TypedFigure {
  if (Math.abs(metres) > LIMITS.coordinate) return { kind: 'wrong', why: 'That is off any site.' };
  return { kind: 'figure', value: metres, signed };
}

const wrongUnit = (unit: string, known: string) =>
  ({ kind: 'wrong', why: `‘${shortened(unit)}’ is no unit here: ${known}.` }) as const;

const shortened = (words: string) => (words.length > 20 ? `${words.slice(0, 20)}…` : words);
