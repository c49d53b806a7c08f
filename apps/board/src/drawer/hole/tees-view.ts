import type { Analysis, HoleFigures } from '@loopwright/analysis';
import type { Hole, Plan, SitePoint, TeeSetId } from '@loopwright/model';
import type { LineEnd } from '../../hole-menu/lengthened.ts';

/** One tee set's tee of a hole. */
export interface TeeRow {
  readonly teeSet: TeeSetId;
  readonly name: string;
  readonly state: 'placed' | 'proposed' | 'missing';
  readonly at?: SitePoint;
  /** The end that slides when a length is typed; only a placed tee's does. */
  readonly end?: LineEnd;
  readonly length?: number;
  readonly pinned: boolean;
}

/** Every tee set of the board with this hole's tee of it. */
export function toTeeRows(hole: Hole, figures: ReturnType<Analysis['holes']['get']>, plan: Plan): readonly TeeRow[] {
  return plan.teeSets.map(({ id, name }) => {
    const tee = teeFigures(figures, id);
    const placed = hole.tees[id];
    const row = { teeSet: id, name, pinned: hole.pinned.includes(`tee:${id}`) };
    if (placed === undefined && !tee) return { ...row, state: 'missing' };
    const length = tee?.measuredLength;
    const at = placed ?? tee?.at;
    return {
      ...row,
      state: placed ? 'placed' : 'proposed',
      ...(at ? { at } : {}),
      ...(length === undefined ? {} : { length }),
      ...(placed && length !== undefined ? { end: { end: `tee:${id}` as const, words: `${name} tee`, length } } : {}),
    };
  });
}

const teeFigures = (figures: HoleFigures | undefined, teeSet: TeeSetId) =>
  figures?.tees.find((tee) => tee.teeSet === teeSet);
