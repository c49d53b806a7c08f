import type { NamedEdit } from '@loopwright/document';
import {
  type CorridorWidths,
  type Hole,
  type LengthUnit,
  LIMITS,
  type Plan,
  type RoutingId,
  settingsOf,
} from '@loopwright/model';
import { parseTypedLength } from '../../reading/typed-figure.ts';
import type { TypedAnswer } from '../typed/typed-answer.ts';
import { lengthAnswer } from '../typed/typed-answer.ts';

export type CorridorPlace = keyof CorridorWidths;

/** One width of a hole's corridor: its own, or the board's. */
export interface CorridorRow {
  readonly place: CorridorPlace;
  readonly words: string;
  /** Metres; the board's setting where the hole has none of its own. */
  readonly width: number;
  readonly own: boolean;
  readonly usual: number;
}

const PLACES: readonly (readonly [CorridorPlace, string])[] = [
  ['tee', 'half-width at the tee'],
  ['landing', 'half-width at the landing area'],
  ['green', 'half-width at the green'],
  ['behind', 'depth behind the green'],
];

export function toCorridorRows(hole: Hole, plan: Plan): readonly CorridorRow[] {
  const settings = settingsOf(plan.settings);
  return PLACES.map(([place, words]) => {
    const own = hole.corridor?.[place];
    const usual = settings[`corridor-${place}`];
    return { place, words, width: own ?? usual, own: own !== undefined, usual };
  });
}

/** A typed width; an empty field goes back to the board's. */
export function corridorAnswer(
  of: { readonly routing: RoutingId; readonly hole: Hole },
  row: CorridorRow,
  typed: string,
  units: LengthUnit,
): TypedAnswer {
  if (typed.trim() === '')
    return row.own ? { kind: 'edit', edit: withWidth(of, row.place, undefined) } : { kind: 'same' };
  const read = parseTypedLength(typed, units);
  if (read.kind === 'figure' && read.value < 0) return { kind: 'wrong', why: 'A width is not less than nothing.' };
  return lengthAnswer(typed, row.width, units, { least: 0, most: LIMITS.corridorWidth }, (width) =>
    withWidth(of, row.place, width),
  );
}

function withWidth(
  { routing, hole }: { readonly routing: RoutingId; readonly hole: Hole },
  place: CorridorPlace,
  width: number | undefined,
): NamedEdit {
  const { [place]: _, ...others } = hole.corridor ?? {};
  const corridor = width === undefined ? others : { ...others, [place]: width };
  return {
    edit: 'set corridor',
    routing,
    hole: hole.id,
    corridor: Object.keys(corridor).length > 0 ? corridor : null,
  };
}
