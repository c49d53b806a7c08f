import type { NamedEdit } from '@loopwright/document';
import { type LengthUnit, yardsFrom } from '@loopwright/model';
import { lengthWords } from '../../reading/lengths.ts';
import {
  parseTypedBearing,
  parseTypedCoordinate,
  parseTypedLength,
  type TypedFigure,
} from '../../reading/typed-figure.ts';

/** What typing into a field comes to: an edit, no difference, or words about what was wrong. */
export type TypedAnswer =
  | { readonly kind: 'edit'; readonly edit: NamedEdit }
  | { readonly kind: 'same' }
  | { readonly kind: 'wrong'; readonly why: string };

/** How far a figure may go, in metres, and what it is called in words when it does not. */
interface Within {
  readonly least: number;
  readonly most: number;
}

/** A typed length that lies within bounds, as an edit; the figure that is shown already is no difference. */
export function lengthAnswer(
  typed: string,
  shown: number,
  units: LengthUnit,
  { least, most }: Within,
  editFor: (metres: number) => NamedEdit | undefined,
): TypedAnswer {
  const read = parseTypedLength(typed, units);
  if (read.kind === 'wrong') return read;
  const metres = read.signed ? shown + read.value : read.value;
  if (tenths(metres, units) === tenths(shown, units)) return { kind: 'same' };
  if (metres < least || metres > most) {
    return { kind: 'wrong', why: `It goes from ${lengthWords(least, units)} to ${lengthWords(most, units)}.` };
  }
  return asAnswer(editFor(Math.round(metres * 1000) / 1000));
}

/** A typed bearing as an edit. */
export function bearingAnswer(
  typed: string,
  shown: number,
  editFor: (radians: number) => NamedEdit | undefined,
): TypedAnswer {
  const read: TypedFigure = parseTypedBearing(typed);
  if (read.kind === 'wrong') return read;
  return degrees(read.value) === degrees(shown) ? { kind: 'same' } : asAnswer(editFor(read.value));
}

/** A typed coordinate in metres on the site plane; the tenth that is shown already is no difference. */
export function coordinateAnswer(
  typed: string,
  shown: number,
  editFor: (metres: number) => NamedEdit | undefined,
): TypedAnswer {
  const read = parseTypedCoordinate(typed);
  if (read.kind === 'wrong') return read;
  if (Math.abs(read.value - shown) < 0.05) return { kind: 'same' };
  return asAnswer(editFor(Math.round(read.value * 1000) / 1000));
}

function asAnswer(edit: NamedEdit | undefined): TypedAnswer {
  return edit ? { kind: 'edit', edit } : { kind: 'same' };
}

const tenths = (metres: number, units: LengthUnit) => Math.round((units === 'yards' ? yardsFrom(metres) : metres) * 10);
const degrees = (radians: number) => Math.round((radians * 1800) / Math.PI);
