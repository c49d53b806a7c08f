import type { FindingUnit } from '@loopwright/analysis';
import type { Names } from '../../reading/names.ts';

/** A measured value or limit in the reader's words. */
export function figureWords(value: number, unit: FindingUnit, names: Pick<Names, 'length' | 'angle'>): string {
  switch (unit) {
    case 'm':
      return names.length(value);
    case 'deg':
      return names.angle(value);
    case 'share':
      return `${Math.round(value * 100)} %`;
    case 'min':
      return `${Math.round(value)} min`;
    default:
      return `${Math.round(value)} ${value === 1 ? unit.replace(/s$/, '') : unit}`;
  }
}
