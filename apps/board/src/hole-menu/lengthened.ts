import type { HoleFigures } from '@loopwright/analysis';
import type { NamedEdit } from '@loopwright/document';
import type { Hole, LengthUnit, RoutingId, TeeSet, TeeSetId } from '@loopwright/model';
import { toMillimetre } from '@loopwright/model';
import { lengthWords } from '../reading/lengths.ts';
import { parseTypedLength } from '../reading/typed-figure.ts';

/** An end of a hole that can slide along the line. */
export interface LineEnd {
  readonly end: Extract<NamedEdit, { readonly edit: 'lengthen' }>['end'];
  readonly words: string;
  /** The hole's length as this end decides it, in metres. */
  readonly length: number;
}

/** The placed tees, each with its own length, then the green with the length from the tee that is read. */
export function lineEnds(
  hole: Hole,
  figures: HoleFigures | undefined,
  teeSets: readonly TeeSet[],
  read: TeeSetId,
): readonly LineEnd[] {
  const tees = (figures?.tees ?? []).filter(({ proposed }) => !proposed);
  const ends = tees.map(({ teeSet, measuredLength }): LineEnd => {
    const name = teeSets.find(({ id }) => id === teeSet)?.name ?? 'tee';
    return { end: `tee:${teeSet}`, words: `${name} tee`, length: measuredLength };
  });
  const fromRead = tees.find(({ teeSet }) => teeSet === read) ?? tees[0];
  return hole.green && fromRead ? [...ends, { end: 'green', words: 'green', length: fromRead.measuredLength }] : ends;
}

export type Lengthened =
  | { readonly kind: 'edit'; readonly edit: NamedEdit }
  | { readonly kind: 'same' }
  | { readonly kind: 'wrong'; readonly why: string };

/** A typed length of a hole as the edit that makes it: '410' is its whole length, '+10' and '−10' so much more or less. */
export function lengthenedTo(
  of: { readonly routing: RoutingId; readonly hole: Hole['id'] },
  { end, length, words }: LineEnd,
  typed: string,
  units: LengthUnit,
): Lengthened {
  const read = parseTypedLength(typed, units);
  if (read.kind === 'wrong') return read;
  // A figure that says what is shown changes nothing, though the tee stands at a fraction.
  if (!read.signed && lengthWords(read.value, units) === lengthWords(length, units)) return { kind: 'same' };
  const by = toMillimetre(read.signed ? read.value : read.value - length);
  if (by === 0) return { kind: 'same' };
  if (length + by < 1)
    return {
      kind: 'wrong',
      why: `That would leave no hole: from the ${words} it is ${lengthWords(length, units)} now.`,
    };
  return { kind: 'edit', edit: { ...of, edit: 'lengthen', end, by } };
}
